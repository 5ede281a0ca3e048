/**
 * Species, moisture and movement: published tables and the formulae that go with them.
 */
@NullMarked
package dev.treen.wood;

import org.jspecify.annotations.NullMarked;

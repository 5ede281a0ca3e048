/**
 * One class a joint: the sizes it changes, the shape it takes out, its proportions, checks and operations.
 */
@NullMarked
package dev.treen.joinery;

import org.jspecify.annotations.NullMarked;

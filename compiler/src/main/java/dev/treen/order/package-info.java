/**
 * What is done first: operations, what must precede what, set-ups and waits.
 */
@NullMarked
package dev.treen.order;

import org.jspecify.annotations.NullMarked;

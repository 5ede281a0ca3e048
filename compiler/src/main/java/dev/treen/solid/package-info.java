/**
 * Parts as convex pieces: what is cut out of them, what overlaps, which faces there are.
 */
@NullMarked
package dev.treen.solid;

import org.jspecify.annotations.NullMarked;

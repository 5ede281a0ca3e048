/**
 * Exact lengths, angles, units and ranges, and how they are written. Knows nothing else of the project.
 */
@NullMarked
package dev.treen.quantity;

import org.jspecify.annotations.NullMarked;

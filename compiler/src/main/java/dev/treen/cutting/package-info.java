/**
 * From finished parts to boards sawn up: puts the project's boards and parts to the solver of `yield`, which knows only
 * rectangles, and brings its answer back into the project's own terms.
 */
@NullMarked
package dev.treen.cutting;

import org.jspecify.annotations.NullMarked;

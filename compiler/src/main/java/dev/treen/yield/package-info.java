/**
 * From boards and parts to a layout with a proven bound. A solver with its own input records.
 */
@NullMarked
package dev.treen.yield;

import org.jspecify.annotations.NullMarked;

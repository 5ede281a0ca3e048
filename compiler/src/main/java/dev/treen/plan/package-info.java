/**
 * The whole result of a project as one value, and the writers that put it on paper, screen or disk.
 */
@NullMarked
package dev.treen.plan;

import org.jspecify.annotations.NullMarked;

/**
 * What a project means: the schema of every block, names, evaluation on demand and how each value came about.
 */
@NullMarked
package dev.treen.model;

import org.jspecify.annotations.NullMarked;

/** What Treen has to say about a project, as plain values: one shape for the terminal, JSON and the editor. */
@NullMarked
package dev.treen.finding;

import org.jspecify.annotations.NullMarked;

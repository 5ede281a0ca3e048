/**
 * What the compiler has to say about a project, as values: a code, a severity, where, why, and how to mend it.
 */
@NullMarked
package dev.treen.finding;

import org.jspecify.annotations.NullMarked;

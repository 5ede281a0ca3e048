/**
 * Source files as text, positions and spans in them. Knows nothing else of the project.
 */
@NullMarked
package dev.treen.source;

import org.jspecify.annotations.NullMarked;

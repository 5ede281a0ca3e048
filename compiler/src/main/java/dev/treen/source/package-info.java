/** Source files as they are, and places in them. Knows nothing of what the text means. */
@NullMarked
package dev.treen.source;

import org.jspecify.annotations.NullMarked;

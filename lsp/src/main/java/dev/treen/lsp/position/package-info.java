/**
 * Places in a text as the protocol counts them: by line, and within the line by bytes, UTF-16 units or characters,
 * whichever the client and the server agreed on.
 */
@NullMarked
package dev.treen.lsp.position;

import org.jspecify.annotations.NullMarked;

/**
 * The server's pipes: messages are cut out of a byte stream, told apart from rubbish, and answered; the process ends
 * when its client does. Knows the protocol's envelope and nothing of Treen.
 */
@NullMarked
package dev.treen.lsp.stdio;

import org.jspecify.annotations.NullMarked;

/**
 * The language server: a second reader of the same values that the command prints, never a second implementation. The
 * only package that sees LSP4J.
 */
@NullMarked
package dev.treen.lsp;

import org.jspecify.annotations.NullMarked;

/**
 * The tree of a source file with its errors, the driver of the generated parser, and the formatter. The only package
 * that sees ANTLR.
 */
@NullMarked
package dev.treen.syntax;

import org.jspecify.annotations.NullMarked;

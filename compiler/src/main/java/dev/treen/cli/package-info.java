/**
 * The treen command.
 */
@NullMarked
package dev.treen.cli;

import org.jspecify.annotations.NullMarked;

/** Measures for contributors: reads instances with known answers from files and prints what the solver makes of them. */
@NullMarked
package dev.treen.cli.bench;

import org.jspecify.annotations.NullMarked;

/**
 * Exact lengths, angles, units and ranges, and how a workshop writes them.
 *
 * <p>This package knows no other. Every length is an exact rational number of millimetres, so that sixty-fourths
 * of an inch and thirds of a board come out whole again; rounding happens only where a figure is written down.
 * Nothing here looks at the machine's locale: the same value is always the same text.
 */
@NullMarked
package dev.treen.quantity;

import org.jspecify.annotations.NullMarked;

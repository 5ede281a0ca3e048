/**
 * Wood as a material: species, moisture, movement, stiffness, and the cautions that go with them.
 *
 * <p>Nature is inexact, so numbers here are {@code double}: lengths in mm, moisture content and relative
 * humidity in percent, temperatures in degrees Celsius, moduli in MPa, forces in N, angles in degrees.
 * Exact lengths belong to {@code dev.treen.quantity}; a caller turns them into mm at this border and never
 * lets a result decide whether two parts touch.
 *
 * <p>Every published figure lives in a CSV beside this package with its source in a column. Data of a user
 * that cannot be computed (a climate outside the printed tables, an unknown species) comes back as a value
 * of a sealed type, never as an exception; exceptions mean a mistake in the calling code.
 */
@NullMarked
package dev.treen.wood;

import org.jspecify.annotations.NullMarked;

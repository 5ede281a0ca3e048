/**
 * Parts as solids: unions of convex pieces with exact rational faces.
 *
 * <p>All coordinates are millimetres held as exact fractions, and every comparison that decides something (do two parts
 * touch, does a cut break out, is a line hidden) is made on them. A {@code double} appears in two places only: in
 * pictures and areas on skew planes, where the true value has a square root in it, and in bounds rounded outward, which
 * may prove that two things are apart but never that they meet.
 *
 * <p>Exact values come out as {@code BigFraction}. Order them with {@code dev.treen.quantity.Exact.compare}: the library's
 * own {@code compareTo} (commons-numbers 1.2) takes two negative values the wrong way round.
 *
 * <p>Coordinates follow the language: {@code x} to the right, {@code y} to the back, {@code z} up. The package knows
 * nothing of parts, joints or wood; its callers give it shapes and names for the cuts they make.
 */
@NullMarked
package dev.treen.solid;

import org.jspecify.annotations.NullMarked;

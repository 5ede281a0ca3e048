/**
 * One class a rule: movement, fit, strength and cautions, each giving findings.
 */
@NullMarked
package dev.treen.check;

import org.jspecify.annotations.NullMarked;

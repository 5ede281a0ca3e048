package dev.treen.joinery;

import dev.treen.model.Measure;

/** A number that a joint settled: its gap, its depth, its shoulder gap; with how it came about. */
public record Figure(String name, Measure measure, boolean chosenByTreen) {}

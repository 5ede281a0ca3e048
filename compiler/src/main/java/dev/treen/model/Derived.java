package dev.treen.model;

/** A value and how it came about. */
public record Derived(Datum value, Derivation how) {}

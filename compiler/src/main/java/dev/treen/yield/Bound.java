package dev.treen.yield;

/**
 * What no layout can beat, and how that is known.
 *
 * @param value least cost or length, or most value
 * @param how the argument, in a word or two
 */
public record Bound(long value, String how) {}

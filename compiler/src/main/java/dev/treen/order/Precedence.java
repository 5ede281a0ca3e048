package dev.treen.order;

/** One operation comes before another, and why. */
record Precedence(int before, int after, String because) {}

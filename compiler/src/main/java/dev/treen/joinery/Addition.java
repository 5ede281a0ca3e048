package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.solid.Side;

/** What a joint adds to a part beyond what is seen: at which side, how much, and why. */
public record Addition(String part, Side side, Measure amount) {}

package dev.treen.model;

import dev.treen.source.Span;
import java.util.Optional;

/**
 * A saw of the shop.
 *
 * @param kerf what it takes at each cut
 * @param depth how thick a piece it goes through, where that is known
 */
public record Saw(String name, Measure kerf, Optional<Measure> depth, Span at) {}

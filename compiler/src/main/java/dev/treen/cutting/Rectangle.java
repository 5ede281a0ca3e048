package dev.treen.cutting;

import dev.treen.quantity.Length;

/** A rectangle on a board: x along the grain from the left end, y across it from the near edge. */
public record Rectangle(Length x, Length y, Length length, Length width) {}

package dev.treen.drawing;

import dev.treen.quantity.Length;

/** A place that is marked out: so far from the left end, the face edge or the face side. */
record Level(Measured along, Length at) {}

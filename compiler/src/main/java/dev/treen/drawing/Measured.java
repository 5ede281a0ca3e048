package dev.treen.drawing;

/** The three ways in which a part is measured: along the grain, from the face edge, from the face side. */
enum Measured {
    LENGTH, WIDTH, THICKNESS
}

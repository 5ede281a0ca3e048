package dev.treen.model;

/**
 * What sawing and planing take.
 *
 * @param kerf what the saw takes at each cut
 * @param shooting on the length, at each end, for the shooting board
 * @param planing on the width, at each edge, and on the thickness at each face of sawn stock
 * @param resaw at each resawn face, to flatten and smooth
 * @param endWaste at each end of a board that has not been cut yet
 */
public record Allowances(Measure kerf, Measure shooting, Measure planing, Measure resaw, Measure endWaste) {}

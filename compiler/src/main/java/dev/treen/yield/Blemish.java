package dev.treen.yield;

/**
 * A flaw of a board that some parts may have in them, away from places of theirs that it would spoil; for all others it is
 * a defect as any. What a kind is and who takes it is decided before the problem is put.
 *
 * @param kind compared with what the parts take
 * @param shape what a part that does not take it keeps clear of
 * @param reach how far it spoils the wood around it: what the places of a part that takes it keep clear of
 */
public record Blemish(String kind, Defect shape, Defect reach) {}

package dev.treen.order;

/**
 * One operation comes before another.
 *
 * @param before the id of the one
 * @param after the id of the other
 * @param because why, in the words of a workshop
 */
public record Precedence(int before, int after, String because) {}

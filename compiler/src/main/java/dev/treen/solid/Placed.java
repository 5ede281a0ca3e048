package dev.treen.solid;

/**
 * A solid where it stands in the assembly, under the name its owner knows it by.
 *
 * @param name the name, unique within one question
 * @param solid the body, in the coordinates of the assembly
 */
public record Placed(String name, Solid solid) {}

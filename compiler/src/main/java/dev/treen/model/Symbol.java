package dev.treen.model;

import dev.treen.source.Span;

/**
 * A named thing that a project declares.
 *
 * @param name dotted name
 * @param kind let, part, board, sheet, file, joint
 * @param nameAt its name where it is declared
 * @param span the whole declaration
 * @param doc its documentation; may be empty
 */
public record Symbol(String name, String kind, Span nameAt, Span span, String doc) {}

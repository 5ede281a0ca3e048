package dev.treen.wood;

/**
 * A caution with its reason. The usual ones only: labels, makers' manuals and local law come first.
 *
 * @param id stable, such as {@code S012}
 * @param kind {@code dust}, {@code chemical}, {@code fire}, {@code finish}, {@code machine}, {@code glue},
 *     {@code mould}, {@code wood} or {@code species}
 * @param hazard what can happen
 * @param trigger what in a project calls for it
 * @param text what to do
 * @param limit a published limit in words, or empty
 * @param citation where it comes from
 */
public record Caution(
        String id, String kind, String hazard, String trigger, String text, String limit, Citation citation) {}

package dev.treen.wood;

/** What a part is made of: solid wood of a species, or a manufactured sheet. */
public sealed interface Material permits Species, SheetGood {

    /** The name as the language writes it, such as {@code black_cherry}. */
    String id();

    /** The name as people write it, such as {@code black cherry}. */
    String commonName();
}

package dev.treen.wood;

/**
 * Where a number comes from.
 *
 * @param source the document and table, for people, such as {@code Wood Handbook FPL-GTR-190 Table 13-5}
 * @param provenance how the number was checked, in the words of the data files: {@code verified: …},
 *     {@code derived …}, {@code from memory}, {@code common practice, no source}, {@code published}
 * @param edition the year of the edition, {@code derived}, or empty where the source has one edition only
 */
public record Citation(String source, String provenance, String edition) {

    /** A citation of a source with one edition. */
    public static Citation of(String source, String provenance) {
        return new Citation(source, provenance, "");
    }

    /** The citation of a number the author of a project wrote. */
    public static Citation declared() {
        return new Citation("as declared in the project", "declared", "");
    }

    static Citation of(Csv.Row row) {
        return of(row.text("source"), row.text("provenance"));
    }
}

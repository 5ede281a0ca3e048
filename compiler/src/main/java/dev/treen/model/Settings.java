package dev.treen.model;

import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import java.util.Optional;

/**
 * What holds for the whole project.
 *
 * @param title as written, or the file's name
 * @param units what bare numbers mean
 * @param format how lengths are shown
 * @param climate of the room where the piece will live; empty where the project is silent
 * @param hand whether it is made by hand
 * @param tolerances how exactly it is made, where the project says so
 * @param saw the saw that cuts the parts, where one is named
 * @param layout what the author wants of the cutting layout
 * @param currency the money of all prices, as the project writes it; empty where it does not
 * @param glue what its joints are glued with, where it says so
 * @param finish what it is finished with, where it says so
 * @param at where the project block is, or the start of the file
 */
public record Settings(
        String title,
        Unit units,
        LengthFormat format,
        Optional<RoomClimate> climate,
        boolean hand,
        Allowances allow,
        Tolerances tolerances,
        Optional<Saw> saw,
        LayoutWishes layout,
        String currency,
        Optional<Ware> glue,
        Optional<Ware> finish,
        Span at) {
    /** A sixty-fourth of an inch, the finest mark of a rule. */
    private static final Length FINEST_MARK = Length.ofInches(1, 64);

    /** A length as it is written into the project, exactly. */
    public String written(Length length) {
        return switch (units) {
            case IN -> length.roundTo(FINEST_MARK).equals(length)
                    ? new LengthFormat.FractionalInches(64).figure(length)
                    : DecimalText.exact(length.mm()) + "mm";
            case MM -> DecimalText.exact(length.mm());
            case CM -> DecimalText.exact(length.mm().divide(10));
            default -> DecimalText.exact(length.mm()) + "mm";
        };
    }

    /** The same project with its lengths shown another way. */
    public Settings shownIn(LengthFormat other) {
        return new Settings(
                title, units, other, climate, hand, allow, tolerances, saw, layout, currency, glue, finish, at);
    }
}

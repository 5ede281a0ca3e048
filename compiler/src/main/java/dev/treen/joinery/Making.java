package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.model.Tolerances;
import dev.treen.quantity.Length;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import dev.treen.wood.GeneralTolerances;
import java.util.Locale;
import java.util.Optional;

/** How exactly dimensions come out, by how they are made (rules of the trade F-02, common practice without a source). */
public final class Making {
    private Making() {
    }

    /** What is made. */
    public enum Kind {
        /** A length, sawn and shot, or cut against a stop. */
        LENGTH("sawn and shot"),
        /** A width, planed to a gauge line or ripped to a fence. */
        WIDTH("planed to width"),
        /** A thickness. */
        THICKNESS("planed to thickness"),
        /** The depth of a groove, housing or mortise, by a gauge or a stop. */
        DEPTH("cut to a gauge"),
        /** What was measured on the piece as made: then only the measuring errs. */
        MEASURED("measured as made");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** How it is made, in words. */
        public String words() {
            return words;
        }

        private Optional<Measure> stated(Tolerances tolerances) {
            return switch (this) {
                case LENGTH -> tolerances.length();
                case WIDTH -> tolerances.width();
                case THICKNESS -> tolerances.thickness();
                case DEPTH -> tolerances.depth();
                case MEASURED -> tolerances.measured();
            };
        }
    }

    /** Plus or minus in mm, and who says so. */
    public record Tolerance(double mm, String source) {}

    /**
     * How exactly a dimension comes out: by its own figure, else by the class of general tolerances, else as is usual.
     *
     * @param nominal how large it is
     * @param said what its part says, with the project's word behind it
     */
    public static Tolerance of(Kind kind, Length nominal, Tolerances said, Settings settings) {
        return kind.stated(said)
                .map(measure -> new Tolerance(measure.value().toDoubleMm(), "the project"))
                .or(() -> graded(kind, nominal, said))
                .orElseGet(() -> usual(kind, settings));
    }

    /** Whether the parts of a joint have a word on how exactly they are made, of their own or by the project. */
    public static boolean stated(Joint joint) {
        return joint.left().tolerances().stated() || joint.right().tolerances().stated();
    }

    // What is measured errs by the rule in the hand, whatever class the piece is made to.
    private static Optional<Tolerance> graded(Kind kind, Length nominal, Tolerances said) {
        return said.grade()
                .filter(grade -> kind != Kind.MEASURED)
                .flatMap(grade -> GeneralTolerances.of(grade, nominal.toDoubleMm()))
                .map(limit -> new Tolerance(limit.mm(), limit.citation().source()));
    }

    private static Tolerance usual(Kind kind, Settings settings) {
        String how = kind == Kind.MEASURED ? "" : settings.hand() ? "hand." : "machine.";
        Figure figure = Figures.standard().get("tolerance." + how + kind.name().toLowerCase(Locale.ROOT));
        return new Tolerance(figure.value(), figure.citation().source());
    }
}

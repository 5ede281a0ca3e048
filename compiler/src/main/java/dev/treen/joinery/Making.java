package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.model.Tolerances;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
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

    /** How exactly {@code kind} comes out in a project. */
    public static Tolerance of(Kind kind, Settings settings) {
        return kind.stated(settings.tolerances())
                .map(measure -> new Tolerance(measure.value().toDoubleMm(), "the project"))
                .orElseGet(() -> usual(kind, settings));
    }

    private static Tolerance usual(Kind kind, Settings settings) {
        String how = kind == Kind.MEASURED ? "" : settings.hand() ? "hand." : "machine.";
        Figure figure = Figures.standard().get("tolerance." + how + kind.name().toLowerCase(Locale.ROOT));
        return new Tolerance(figure.value(), figure.citation().source());
    }
}

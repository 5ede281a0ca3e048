package dev.treen.joinery;

import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.wood.Caution;
import dev.treen.wood.Cautions;
import dev.treen.wood.Emc;
import dev.treen.wood.Figures;
import dev.treen.wood.Species;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The cautions that a project calls for by what is really in it: each once, with what calls for it and who says so. The
 * usual ones only: labels, makers' manuals, local codes and licensed practice come first.
 */
public final class ProjectCautions {
    private static final List<String> FOOD = List.of("bowl", "spoon", "bread", "cutting", "cheese", "tea", "coffee",
            "spice", "food", "salt", "fruit");
    private static final List<String> CHILD = List.of("toy", "cot", "crib", "child", "baby", "cradle", "high chair");
    private static final List<String> ELSEWHERE = List.of("bunk", "loft bed", "ladder", "stair", "swing", "crib", "cot",
            "high chair", "cradle");

    private final Map<String, Set<String>> called = new LinkedHashMap<>();

    private ProjectCautions() {
    }

    /** A caution and what of the project calls for it. */
    public record Called(Caution caution, List<String> by) {
        /** The caution in one sentence or two, with its source. */
        public String text() {
            String what = by.isEmpty() ? "" : "`" + String.join("`, `", by) + "`: ";
            String limit = caution.limit().isEmpty() ? "" : " Limit: " + caution.limit() + ".";
            return what + caution.hazard() + ". " + caution.text() + limit + " (" + caution.citation().source() + ")";
        }
    }

    /** All cautions that the project calls for, in the order of the published list. */
    public static List<Called> of(Joined joined) {
        ProjectCautions cautions = new ProjectCautions();
        joined.project().boards().forEach(cautions::board);
        cautions.parts(joined);
        cautions.purpose(joined);
        List<Called> all = new ArrayList<>();
        for (Caution caution : Cautions.all()) {
            Set<String> by = cautions.called.get(caution.id());
            if (by != null) {
                all.add(new Called(caution, List.copyOf(by)));
            }
        }
        return all;
    }

    /** Those that a thing of this name calls for. */
    public static List<Called> about(String name, Joined joined) {
        return of(joined).stream().filter(called -> called.by().contains(name)).toList();
    }

    /** Who decides where Treen must not; empty where nothing of the kind is made. */
    public static Optional<String> defers(Joined joined) {
        return ELSEWHERE.stream()
                .filter(word -> named(joined, word))
                .findFirst()
                .map(word -> "This looks like a " + word
                        + ": whether it is safe is not for Treen to say. Ask the local code,"
                        + " the product-safety standard, or a licensed engineer.");
    }

    private void call(String id, String by) {
        called.computeIfAbsent(id, key -> new LinkedHashSet<>()).add(by);
    }

    private void board(Board board) {
        if (board.sheet()) {
            call("S008", board.name());
            return;
        }
        Optional<Species> species = Woods.of(board);
        species.ifPresent(wood -> {
            Cautions.forSpecies(wood).forEach(caution -> call(caution.id(), board.name()));
            if (wood.kind() == Species.Kind.HARDWOOD) {
                call("S005", board.name());
            }
            if (wood.id().equals("teak") || wood.id().startsWith("rosewood")) {
                call("S030", board.name());
            }
        });
        if (board.moisture().orElse(0.0) > Figures.standard().value("caution.mould.from")) {
            call("S035", board.name());
        }
        if (board.defects().stream().map(Defect::kind).anyMatch(kind -> kind.equals("punky"))) {
            call("S034", board.name());
            call("S036", board.name());
        }
    }

    private void parts(Joined joined) {
        Settings settings = joined.project().settings();
        for (FinishedPart part : joined.parts()) {
            String name = part.part().name();
            if (!settings.hand() && part.part().bought().isEmpty() && !part.part().still()) {
                if (tooShort(part.length())) {
                    call("S018", name);
                    call("S020", name);
                }
                if (part.thickness().value().toDoubleMm() < Figures.standard().value("caution.thin")) {
                    call("S019", name);
                }
            }
            if (part.part().service().finish().filter(finish -> !finish.faces().equals("none")).isPresent()) {
                call("S012", name);
                call("S013", name);
            }
            wet(part.part(), settings);
        }
        glued(joined, settings);
    }

    /** Where the air keeps wood so damp, glue for indoors lets go. */
    private void wet(Part part, Settings settings) {
        part.service().room().or(settings::climate)
                .map(Nature::climate)
                .filter(climate -> climate.wettest() instanceof Emc.Moisture wet
                        && wet.percent() > Figures.standard().value("caution.outdoor.from"))
                .ifPresent(climate -> call("S032", part.name()));
    }

    /** Boards too wet or too dry for glue. */
    private void glued(Joined joined, Settings settings) {
        for (MadeJoint made : joined.joints()) {
            if (made.holdsFast()) {
                for (Part part : List.of(made.joint().left(), made.joint().right())) {
                    Stream.concat(part.bought().stream(), part.sources().stream())
                            .filter(board -> !board.sheet())
                            .filter(board -> outside(board.moisture().orElse(8.0)))
                            .forEach(board -> call("S027", board.name()));
                }
            }
        }
        if (!settings.hand() && joined.joints().stream().anyMatch(made -> made.joint().kind().equals("rebate"))) {
            joined.joints().stream()
                    .filter(made -> made.joint().kind().equals("rebate"))
                    .map(made -> made.joint().right())
                    .filter(part -> tooShort(part.length()))
                    .forEach(part -> call("S022", part.name()));
        }
    }

    private static boolean tooShort(Measure length) {
        return length.value().toDoubleMm() < Figures.standard().value("caution.short");
    }

    private static boolean outside(double moisture) {
        Figures figures = Figures.standard();
        return moisture < figures.value("movement.linear.from") || moisture > figures.value("movement.linear.to");
    }

    private void purpose(Joined joined) {
        if (FOOD.stream().anyMatch(word -> named(joined, word))) {
            call("S014", joined.project().settings().title());
        }
        if (CHILD.stream().anyMatch(word -> named(joined, word))) {
            call("S016", joined.project().settings().title());
        }
    }

    /** Whether the title, or the name of a part, says what the piece is for. */
    private static boolean named(Joined joined, String word) {
        String title = " " + joined.project().settings().title().toLowerCase(Locale.ROOT).replace('-', ' ') + " ";
        return title.contains(" " + word + " ") || title.contains(" " + word + "s ")
                || joined.parts().stream().anyMatch(part -> part.part().name().equals(word.replace(' ', '_')));
    }
}

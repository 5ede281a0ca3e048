package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Nature;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.RoomClimate;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.source.Span;
import dev.treen.wood.Climate;
import dev.treen.wood.Emc;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What movement was computed with where the project is silent: one note for the room, and one for each board. Only
 * projects with panels in grooves are told, since only there a size follows from it.
 */
final class Assumptions implements Check {
    static final FindingKind CLIMATE = FindingKind.note("climate-assumed",
            "The project does not say how damp its room is");
    static final FindingKind MOISTURE = FindingKind.note("moisture-assumed",
            "A board's moisture is not given");
    static final FindingKind SPECIES = FindingKind.note("species-assumed", "A board's species is not given");
    static final FindingKind OUT_OF_RANGE = FindingKind.error("climate-out-of-range",
            "The air of the room is outside the printed table");

    @Override
    public List<FindingKind> kinds() {
        return List.of(CLIMATE, MOISTURE, SPECIES, OUT_OF_RANGE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        List<Finding> findings = new ArrayList<>();
        outOfRange(joined, findings);
        Set<String> panels = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND)) {
                panels.add(made.joint().left().name());
            }
        }
        List<Part> moving = joined.parts().stream()
                .map(FinishedPart::part)
                .filter(part -> panels.contains(part.name()))
                .filter(part -> !part.still())
                .toList();
        if (settings.climate().isEmpty() && moving.stream().anyMatch(p -> p.service().room().isEmpty())) {
            findings.add(climate(settings));
        }
        Set<Span> told = new HashSet<>();
        for (Part part : moving) {
            if (told.add(part.from().map(Board::nameAt).orElse(part.nameAt()))) {
                silent(part, joined.nature(part), findings);
            }
        }
        return findings;
    }

    private static Finding climate(Settings settings) {
        Figures figures = Figures.standard();
        String room = "{ humidity " + write(figures, "room.humidity.from") + "%.."
                + write(figures, "room.humidity.to") + "%; temperature " + write(figures, "room.temperature.from")
                + "degC.." + write(figures, "room.temperature.to") + "degC }";
        return Finding.of(CLIMATE, head(settings.at()), "How damp the room gets is assumed")
                .found("Movement is computed for " + write(figures, "room.humidity.from") + " % to "
                        + write(figures, "room.humidity.to") + " % humidity at "
                        + write(figures, "room.temperature.from") + " to " + write(figures, "room.temperature.to")
                        + " °C, a heated room (" + figures.get("room.humidity.from").citation().source() + ").")
                .because("The gaps of panels follow from it.")
                .remedy(new Remedy(
                        "say what the room is like, through the year: `climate " + room + "` in the project block",
                        Remedy.Grade.NEEDS_VALUE,
                        List.of()))
                .build();
    }

    private static String write(Figures figures, String key) {
        return DecimalText.write(figures.value(key), 1);
    }

    private static void silent(Part part, Nature nature, List<Finding> findings) {
        Figures figures = Figures.standard();
        Span at = part.from().map(Board::nameAt).orElse(part.nameAt());
        String name = part.from().map(Board::name).orElse(part.name());
        if (nature.assumed().contains(Nature.Silence.MOISTURE)) {
            Figure usual = figures.get("bench.moisture");
            findings.add(Finding.of(MOISTURE, at, "The moisture of `" + name + "` is assumed")
                    .found(Amounts.moisture(usual.value()) + " when it is cut (" + usual.citation().source() + ").")
                    .because("How far a panel grows depends on how dry it was made.")
                    .about(name)
                    .remedy(new Remedy(
                            "measure it with a meter and write `moisture 9%` with what it shows",
                            Remedy.Grade.NEEDS_VALUE,
                            List.of()))
                    .build());
        }
        if (nature.assumed().contains(Nature.Silence.SPECIES)) {
            Figure usual = figures.get("movement.unknown-species");
            findings.add(Finding.of(SPECIES, at, "The species of `" + name + "` is assumed")
                    .found("A wood that moves " + DecimalText.write(usual.value(), 5) + " of its width per 1 % of"
                            + " moisture, as lively ones do (" + usual.citation().source() + ").")
                    .because("Species differ by a factor of two in how much they move.")
                    .about(name)
                    .remedy(new Remedy(
                            part.from().isPresent()
                                    ? "write `species` in the board"
                                    : "name the board that `" + name + "` comes from",
                            Remedy.Grade.NEEDS_VALUE,
                            List.of()))
                    .build());
        }
    }

    /** The equation of the handbook is printed for a range; outside it the room is taken to be as the bench. */
    private static void outOfRange(Joined joined, List<Finding> findings) {
        Set<RoomClimate> rooms = new LinkedHashSet<>();
        joined.project().settings().climate().ifPresent(rooms::add);
        joined.parts().forEach(part -> part.part().service().room().ifPresent(rooms::add));
        for (RoomClimate room : rooms) {
            Climate climate = Nature.climate(room);
            Stream.of(climate.wettest(), climate.driest())
                    .filter(Emc.OutOfRange.class::isInstance)
                    .map(Emc.OutOfRange.class::cast)
                    .findFirst()
                    .ifPresent(range -> findings.add(outOfRange(room, range)));
        }
    }

    private static Finding outOfRange(RoomClimate room, Emc.OutOfRange range) {
        return Finding.of(
                OUT_OF_RANGE,
                range.what().equals("humidity") ? room.humidityAt() : room.temperatureAt(),
                "The " + range.what() + " of " + (room.name().isEmpty() ? "the room" : "`" + room.name() + "`")
                        + " is outside the printed table")
                .found(DecimalText.write(range.given(), 1) + " " + range.unit() + "; the table goes from "
                        + DecimalText.write(range.from(), 1) + " to "
                        + DecimalText.write(range.to(), 1) + ".")
                .because("The moisture of wood in such air is not published ("
                        + range.citation().source() + "), so movement cannot be computed.")
                .build();
    }

    /** The first word of a block: a whole block is too long to mark. */
    private static Span head(Span block) {
        int space = 0;
        String text = block.text();
        while (space < text.length() && Character.isLetter(text.charAt(space))) {
            space++;
        }
        return block.first(space);
    }
}

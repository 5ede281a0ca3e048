package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Nature;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.wood.Boards;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A board far from what its room makes of it moves after it was fitted (rules of the trade M-23: over 2 points, common
 * practice; the wait from Franklin International's gluing guide, scaled with the square of the thickness).
 */
final class NotAcclimatised implements Check {
    static final FindingKind NOT_ACCLIMATISED = FindingKind.warning("not-acclimatised",
            "A board has not come to rest in its room");

    @Override
    public List<FindingKind> kinds() {
        return List.of(NOT_ACCLIMATISED);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        Map<String, Part> first = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            part.part()
                    .sources()
                    .stream()
                    .filter(board -> board.moisture().isPresent() && !board.sheet())
                    .forEach(board -> first.putIfAbsent(board.name(), part.part().takenFrom(board)));
        }
        return first.values().stream().flatMap(part -> judged(part, settings).stream()).toList();
    }

    private static Optional<Finding> judged(Part part, Settings settings) {
        Nature nature = Nature.of(part, settings);
        if (nature.air().isEmpty()) {
            return Optional.empty();
        }
        Board board = part.from().orElseThrow();
        double bench = nature.seasons().bench();
        double room = nature.usualMoisture();
        Boards.Settling settling = Boards.settling(
                board.thickness().value().toDoubleMm(), bench, room, Figures.standard());
        if (settling.verdict().grade() == Verdict.Grade.FINE) {
            return Optional.empty();
        }
        int days = (int) Math.ceil(settling.waitDays());
        Finding.Builder finding = Finding.of(
                NOT_ACCLIMATISED,
                board.nameAt(),
                "`" + board.name() + "` is " + (bench > room ? "damper" : "drier") + " than its room will keep it")
                .found("It has " + Amounts.moisture(bench) + "; the room brings it to "
                        + Amounts.moisture(nature.seasons().dry()) + " to " + Amounts.moisture(nature.seasons().wet())
                        + " through the year, " + Amounts.moisture(room) + " in the middle: "
                        + Amounts.moisture(settling.distancePoints()) + " apart.")
                .because("What is fitted now goes on " + (bench > room ? "shrinking" : "swelling")
                        + " afterwards. Over 2 points is too far (common practice, no source).")
                .about(board.name())
                .number("moisture", bench)
                .number("room", room)
                .number("days", days)
                .remedy(Remedy.choice("let it lie in stick in such a room for about " + days
                        + " days, until two weighings a few days apart agree, and write what the meter then shows"));
        nature.air().ifPresent(c -> finding.related(c.humidityAt(), "the air of the room"));
        return Optional.of(finding.build());
    }
}

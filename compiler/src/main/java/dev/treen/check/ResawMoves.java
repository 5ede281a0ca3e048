package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Nature;
import dev.treen.model.Board;
import dev.treen.model.Derivation;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.wood.Cupping;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A leaf resawn from a board that is damper in its middle goes hollow as its faces even out (rule of the trade M-18,
 * derived), and what is left for planing has to take that away. Only where the board says what its middle has.
 */
final class ResawMoves implements Check {
    static final FindingKind MOVES = FindingKind.warning("resaw-moves",
            "A resawn leaf goes hollow by more than is planed");

    @Override
    public List<FindingKind> kinds() {
        return List.of(MOVES);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (FinishedPart part : joined.parts()) {
            part.part().sources().stream()
                    .filter(board -> board.core().isPresent() && resawn(part, board))
                    .forEach(board -> judged(part, board, settings)
                            .filter(finding -> told.add(board.name()))
                            .ifPresent(findings::add));
        }
        return findings;
    }

    /** Whether two such leaves and a saw cut fit into the board's thickness. */
    private static boolean resawn(FinishedPart part, Board board) {
        Length two = part.thickness().value().plus(part.part().allow().resaw().value()).times(2)
                .plus(part.part().allow().kerf().value());
        return two.compareTo(board.thickness().value()) <= 0;
    }

    private static Optional<Finding> judged(FinishedPart part, Board board, Settings settings) {
        Nature nature = Nature.of(part.part().takenFrom(board), settings);
        double core = board.core().orElseThrow();
        double hollow = Cupping.ofResawingMm(
                part.width().value().toDoubleMm(),
                part.thickness().value().toDoubleMm(),
                nature.across(),
                core - nature.seasons().bench());
        Measure resaw = part.part().allow().resaw();
        if (hollow <= resaw.value().toDoubleMm()) {
            return Optional.empty();
        }
        Length enough = Length.nearest(hollow, Length.ofMm(1).dividedBy(1000)).roundUpTo(Amounts.step(settings));
        String figure = Amounts.written(enough, settings);
        Finding.Builder finding = Finding.of(
                MOVES, board.moistureAt(),
                "Leaves resawn from `" + board.name() + "` go hollow by more than is planed off")
                .label("drier outside than in")
                .found("`" + part.part().name() + "` goes " + Amounts.fine(hollow, settings) + " hollow; "
                        + Amounts.text(resaw.value(), settings) + " is left on each resawn face.")
                .because("The board has " + Amounts.moisture(nature.seasons().bench()) + " outside and "
                        + Amounts.moisture(core) + " in its middle; the damper face shrinks more. A case-hardened board"
                        + " moves at once and by more: saw a fork from it first.")
                .related(resaw.at(), "what is left for planing")
                .about(board.name())
                .about(part.part().name())
                .number("hollow", hollow)
                .number("needed", enough.toDoubleMm());
        if (resaw.how().formula() instanceof Derivation.Written) {
            finding.remedy(Remedy.choice(
                    "leave " + figure + " on each resawn face", new Edit(resaw.at(), figure)));
        } else {
            finding.remedy(Remedy.choice("leave more on each resawn face: `allow { resaw " + figure + " }`"));
        }
        return Optional.of(finding
                .remedy(Remedy.choice("resaw it thicker, and let the leaves lie in stick until two weighings agree"))
                .build());
    }
}

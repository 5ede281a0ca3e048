package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Measure;
import dev.treen.model.Saw;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A saw goes through no piece thicker than it is deep. */
final class SawDepth implements Check {
    private static final FindingKind TOO_SHALLOW = FindingKind.warning("saw-too-shallow",
            "A board is thicker than the saw reaches");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOO_SHALLOW);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Optional<Saw> saw = joined.project().settings().saw();
        List<Finding> findings = new ArrayList<>();
        if (saw.isEmpty() || saw.get().depth().isEmpty()) {
            return findings;
        }
        Measure depth = saw.get().depth().get();
        Map<String, Board> boards = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            part.part().sources().forEach(board -> boards.put(board.name(), board));
        }
        for (Board board : boards.values()) {
            if (board.thickness().value().compareTo(depth.value()) > 0) {
                String thick = Amounts.text(board.thickness().value(), joined.project().settings());
                findings.add(Finding.of(
                        TOO_SHALLOW,
                        board.thickness().at(),
                        "`" + board.name() + "` is thicker than the saw `" + saw.get().name() + "` goes through")
                        .found("The board is " + thick + " thick; the saw reaches "
                                + Amounts.text(depth.value(), joined.project().settings()) + ".")
                        .because("Cut from both faces, the two kerfs seldom meet, and the step has to be planed off.")
                        .related(depth.at(), "how deep it reaches")
                        .remedy(Remedy.choice("name a saw that reaches deeper, or resaw the board first"))
                        .about(board.name())
                        .build());
            }
        }
        return findings;
    }
}

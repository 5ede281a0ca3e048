package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A part, with its allowances, against the board that it is to come from: too short, too narrow or too thin. */
final class BoardTooSmall implements Check {
    static final FindingKind TOO_SHORT = FindingKind.error("board-too-short", "A board is too short for a part");
    static final FindingKind TOO_NARROW = FindingKind.error("board-too-narrow", "A board is too narrow for a part");
    static final FindingKind TOO_THIN = FindingKind.error("board-too-thin", "A board is too thin for a part");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOO_SHORT, TOO_NARROW, TOO_THIN);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        LengthFormat format = joined.project().settings().format();
        for (FinishedPart part : joined.parts()) {
            Optional<Board> from = part.part().from();
            if (from.isEmpty()) {
                continue;
            }
            Board board = from.get();
            Length usable = board.length()
                    .value()
                    .minus(board.allow().endWaste().value().times(2))
                    .max(Length.ZERO);
            compare(TOO_SHORT, "short", part, part.roughLength(), usable, board.length(), board, format, findings);
            compare(
                    TOO_NARROW,
                    "narrow",
                    part,
                    part.roughWidth(),
                    board.width().value(),
                    board.width(),
                    board,
                    format,
                    findings);
            Length thick = board.sheet() ? part.thickness().value() : part.roughThickness().value();
            Measure thickness = new Measure(thick, part.thickness().at(), part.roughThickness().how());
            compare(
                    TOO_THIN,
                    "thin",
                    part,
                    thickness,
                    board.thickness().value(),
                    board.thickness(),
                    board,
                    format,
                    findings);
        }
        return findings;
    }

    private static void compare(
            FindingKind kind,
            String word,
            FinishedPart part,
            Measure needed,
            Length there,
            Measure board,
            Board of,
            LengthFormat format,
            List<Finding> findings) {
        if (needed.value().compareTo(there) <= 0) {
            return;
        }
        String name = part.part().name();
        boolean ends = kind.equals(TOO_SHORT);
        findings.add(Finding.of(kind, needed.at(), "`" + of.name() + "` is too " + word + " for `" + name + "`")
                .found("`" + name + "` needs " + format.text(needed.value()) + " with its allowances; `" + of.name()
                        + "` has " + format.text(there) + (ends ? " between its ends" : "") + ": "
                        + format.text(needed.value().minus(there)) + " are missing.")
                .because("Rough sizes hold what the joints hide and what saw and plane take.")
                .related(board.at(), "the board's size")
                .about(name)
                .about(of.name())
                .number("needed", needed.value().toDoubleMm())
                .number("there", there.toDoubleMm())
                .remedy(Remedy.choice("make the part smaller by "
                        + format.text(needed.value().minus(there)) + ", or take another board"))
                .build());
    }
}

package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.Rings;
import dev.treen.model.Settings;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * A part that says its rings lie otherwise than its board's. Turned on edge a part may come out so, if it is no wider
 * than the board is thick: then its width is the board's thickness. The words of the trade cover 30° each (common
 * practice, no source).
 */
final class RingsContradict implements Check {
    static final FindingKind CONTRADICT = FindingKind.warning("rings-contradict",
            "A part's rings are not those of its board");

    @Override
    public List<FindingKind> kinds() {
        return List.of(CONTRADICT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        for (FinishedPart part : joined.parts()) {
            Rings own = part.part().rings();
            part.part().sources().stream()
                    .filter(board -> part.part().saysRings() && !board.sheet() && !board.rings().assumed())
                    .filter(board -> !own.equals(board.rings()) && own.staves().isEmpty()
                            && board.rings().staves().isEmpty() && !canBe(part, board))
                    .findFirst()
                    .ifPresent(board -> findings.add(finding(part.part(), board, joined.project().settings())));
        }
        return findings;
    }

    private static boolean canBe(FinishedPart part, Board board) {
        double covers = Figures.standard().value("rings.flat.to");
        double apart = Math.abs(part.part().rings().degrees() - board.rings().degrees());
        boolean onEdge = part.width().value().compareTo(board.thickness().value()) <= 0;
        double turned = Math.abs(90 - part.part().rings().degrees() - board.rings().degrees());
        return apart <= covers || (onEdge && turned <= covers);
    }

    private static Finding finding(Part part, Board board, Settings settings) {
        return Finding.of(
                CONTRADICT,
                part.ringsAt(),
                "`" + part.name() + "` says " + part.rings().word() + " rings, but `" + board.name() + "` has "
                        + board.rings().word() + " ones")
                .found("A part lies in its board as the board's rings do, unless it is no wider than the board is"
                        + " thick, " + Amounts.text(board.thickness().value(), settings)
                        + ", and turned on edge.")
                .because("How much a panel moves follows from its rings; one of the two is wrong.")
                .related(board.nameAt(), "its board")
                .about(part.name())
                .about(board.name())
                .remedy(Remedy.choice(
                        "write the board's, `rings " + board.rings().word() + "`, if its end grain shows them",
                        new Edit(part.ringsAt(), board.rings().word())))
                .remedy(Remedy.choice("write in the board what its end grain shows"))
                .build();
    }
}

package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Part;
import dev.treen.model.Service;
import dev.treen.wood.Figures;
import java.util.List;

/**
 * A wide part finished on one face only takes up moisture by the other and warps (rule of the trade M-24, common practice,
 * no source; that both faces are to be planed alike: Noyes, Handwork in Wood, ch. III). A finish slows what the seasons
 * do; nothing is computed from it.
 */
final class OneFaceFinished implements Check {
    static final FindingKind ONE_FACE = FindingKind.warning("one-face-finished", "A part is finished on one face only");

    @Override
    public List<FindingKind> kinds() {
        return List.of(ONE_FACE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        double narrow = Figures.standard().value("cross-grain-glue.width.warning");
        return joined.parts().stream()
                .map(FinishedPart::part)
                .filter(part -> part.service().finish().filter(f -> f.faces().equals("one")).isPresent())
                .filter(part -> !part.still())
                .filter(part -> part.width().value().toDoubleMm() > narrow)
                .map(OneFaceFinished::finding)
                .toList();
    }

    private static Finding finding(Part part) {
        Service.Finish finish = part.service().finish().orElseThrow();
        return Finding.of(ONE_FACE, finish.at(), "`" + part.name() + "` is finished on one face only")
                .label("the other face stays open")
                .found("The open face takes up and gives off moisture faster than the finished one.")
                .because(
                        "A wide board goes hollow toward the drier face. The same coats on both faces keep it flat; they"
                                + " slow its growth and do not stop it.")
                .related(part.width().at(), "it is this wide")
                .about(part.name())
                .remedy(Remedy.safe("finish both faces: `finish both`", new Edit(finish.at(), "both")))
                .build();
    }
}

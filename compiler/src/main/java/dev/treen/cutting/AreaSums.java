package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.quantity.Length;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Adds up where the wood of the boards goes. */
final class AreaSums {
    private AreaSums() {
    }

    static Areas of(Joined joined, List<BoardCut> boards, List<Glued> glued) {
        Map<String, Glued> staves = new HashMap<>();
        glued.forEach(each -> staves.put(each.part(), each));
        Map<String, FinishedPart> parts = new HashMap<>();
        joined.made().forEach(part -> parts.put(part.part().name(), part));
        double all = 0;
        double finished = 0;
        double rough = 0;
        double kerf = 0;
        double offcuts = 0;
        for (BoardCut cut : boards) {
            all += mm2(cut.board().length().value(), cut.board().width().value());
            for (BoardCut.OnBoard piece : cut.parts()) {
                rough += mm2(piece.area().length(), piece.area().width());
                for (Blank.Member member : piece.blank().members()) {
                    FinishedPart part = parts.get(member.part());
                    finished += part == null ? 0 : share(part, member, staves) / piece.blank().members().size();
                }
            }
            for (BoardCut.SawCut saw : cut.cuts()) {
                kerf += mm2(saw.kerf(), saw.along() ? saw.piece().length() : saw.piece().width());
            }
            for (Rectangle offcut : cut.offcuts()) {
                offcuts += mm2(offcut.length(), offcut.width());
            }
        }
        return new Areas(all, finished, rough, kerf, offcuts);
    }

    /** What a part, or a stave of it, has of the finished face. */
    private static double share(FinishedPart part, Blank.Member member, Map<String, Glued> staves) {
        double whole = mm2(part.length().value(), part.width().value());
        Glued glued = staves.get(member.part());
        return glued == null || member.stave() == Blank.Member.WHOLE ? whole
                : whole * glued.staves().get(member.stave() - 1).toDoubleMm() / part.roughWidth().value().toDoubleMm();
    }

    private static double mm2(Length a, Length b) {
        return a.toDoubleMm() * b.toDoubleMm();
    }
}

package dev.treen.cutting;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.yield.Unplaced;
import java.util.List;
import java.util.Optional;

/** Says why a part is on no board: which board came nearest, what stands in the way there, and by how much. */
final class NoRoom {
    private final Joined joined;
    private final Rack rack;
    private final Wished wished;
    private final LengthFormat format;

    NoRoom(Joined joined, Rack rack, Wished wished) {
        this.joined = joined;
        this.rack = rack;
        this.wished = wished;
        this.format = joined.project().settings().format();
    }

    Optional<Finding> of(Unplaced unplaced) {
        return joined.part(unplaced.pieceId()).map(part -> finding(part, unplaced.reason()));
    }

    private Finding finding(FinishedPart part, Unplaced.Reason reason) {
        String name = part.part().name();
        Finding.Builder finding = Finding.of(
                CuttingFindings.NO_ROOM,
                part.part().nameAt(),
                "There is no room for `" + name + "` on " + where(part))
                .label("rough it is " + part.rough().text(format))
                .because(
                        "Parts are laid out at their rough size, clear of flaws, along the grain, so that every cut runs"
                                + " from edge to edge." + inRun(name))
                .about(name);
        switch (reason) {
            case Unplaced.Reason.NoStockAccepted() -> tooThick(part, finding);
            case Unplaced.Reason.TooLarge large -> tooLarge(large, finding);
            case Unplaced.Reason.DefectInTheWay flaw -> flawed(flaw, finding);
            case Unplaced.Reason.NoRoom full -> full(full, finding);
            case Unplaced.Reason.NotWorthIt() -> finding.found("Other parts took its place.");
        }
        return finding.build();
    }

    private String inRun(String part) {
        List<String> run = wished.runOf(part);
        return run.isEmpty() ? ""
                : " It belongs to the run `" + String.join("`, `", run)
                        + "`, which is sawn whole from one strip, and the"
                        + " strip has no room. Two shorter runs keep the figure at every corner but one, which goes to"
                        + " the back.";
    }

    private static String where(FinishedPart part) {
        return part.part().from().map(b -> "`" + b.name() + "`").orElse("the boards");
    }

    private String text(long units) {
        return format.text(Units.length(units));
    }

    private static double mm(long units) {
        return (double) units / Units.FINE;
    }

    private void tooThick(FinishedPart part, Finding.Builder finding) {
        Length wanted = part.thickness().value();
        Optional<Rack.Leaf> nearest = rack.leaves().values().stream()
                .filter(leaf -> Leaves.mayComeFrom(part, leaf.of().board()))
                .min((a, b) -> a.of().thickness().minus(wanted).abs()
                        .compareTo(b.of().thickness().minus(wanted).abs()));
        if (nearest.isEmpty()) {
            finding.found("No board may give it.");
            return;
        }
        Leaves leaves = nearest.get().of();
        Board board = leaves.board();
        Length off = wanted.minus(leaves.thickness());
        finding.found("`" + board.name() + "` " + (board.sheet() ? "is " : "gives ") + format.text(leaves.thickness())
                + (board.sheet() ? " and is used as it is" : " once its faces are flat") + "; `"
                + part.part().name() + "` is " + format.text(wanted) + " thick: " + format.text(off.abs())
                + (off.signum() > 0 ? " are missing." : " too much."))
                .related(board.thickness().at(), "the board's thickness")
                .related(part.thickness().at(), "the part's thickness")
                .number("missing", off.toDoubleMm())
                .remedy(Remedy.choice(off.signum() > 0
                        ? "take a thicker board, or make the part thinner by " + format.text(off)
                        : "take a sheet of that thickness"));
    }

    private void tooLarge(Unplaced.Reason.TooLarge large, Finding.Builder finding) {
        Board board = rack.leaf(large.stockId()).of().board();
        String along = large.tooLong() > 0 ? text(large.tooLong()) + " too long" : "";
        String across = large.tooWide() > 0 ? text(large.tooWide()) + " too wide" : "";
        String both = along + (along.isEmpty() || across.isEmpty() ? "" : " and ") + across;
        finding.found("It comes nearest to fitting on `" + board.name() + "`, where it is " + both + ".")
                .related(board.length().at(), "the board's size")
                .number("tooLong", mm(large.tooLong()))
                .number("tooWide", mm(large.tooWide()))
                .remedy(Remedy.choice("make it smaller, or take a larger board"));
    }

    private void flawed(Unplaced.Reason.DefectInTheWay flaw, Finding.Builder finding) {
        Board board = rack.leaf(flaw.stockId()).of().board();
        Optional<Defect> seen = board.defects().stream()
                .filter(d -> Rack.defect(d).equals(flaw.defect()))
                .findFirst();
        String what = seen.map(d -> "a " + d.kind()).orElse("its end");
        finding.found("On `" + board.name() + "` " + what + " stands in the way; it would fit if it were "
                + text(flaw.shorterBy()) + " shorter, or " + text(flaw.narrowerBy()) + " narrower.")
                .number("shorterBy", mm(flaw.shorterBy()))
                .number("narrowerBy", mm(flaw.narrowerBy()))
                .remedy(Remedy.choice("make it smaller, or take another board"));
        seen.ifPresent(d -> finding.related(d.span(), "this " + d.kind()));
    }

    private void full(Unplaced.Reason.NoRoom full, Finding.Builder finding) {
        String board = rack.leaf(full.moreOf()).of().board().name();
        finding.found((full.certain()
                ? "It fits alone, and it is certain that not all parts fit together"
                : "It fits alone, and no place was found for it beside the others")
                + "; one more board like `" + board + "` would hold it.")
                .remedy(Remedy.choice("add a board like `" + board + "`, or make parts smaller"));
    }
}

package dev.treen.cutting;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.yield.Unplaced;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Says why a stave, or a piece that is resawn for two parts, is on no board. */
final class NoRoomForBlank {
    private final Rack rack;
    private final Blank blank;
    private final List<FinishedPart> parts;
    private final LengthFormat format;

    NoRoomForBlank(Joined joined, Rack rack, Blank blank) {
        this.rack = rack;
        this.blank = blank;
        this.parts = blank.parts().stream().flatMap(name -> joined.part(name).stream()).toList();
        this.format = joined.project().settings().format();
    }

    Finding finding(Unplaced.Reason reason) {
        FinishedPart first = parts.getFirst();
        Finding.Builder finding = Finding.of(
                CuttingFindings.NO_ROOM, first.part().nameAt(), "There is no room for " + what())
                .because(because());
        parts.forEach(part -> finding.about(part.part().name()));
        switch (reason) {
            case Unplaced.Reason.NoStockAccepted() -> thick(finding);
            case Unplaced.Reason.TooLarge large -> finding
                    .found("It comes nearest to fitting on `" + board(large.stockId()) + "`, where it is "
                            + over(large.tooLong(), "too long", large.tooWide(), "too wide") + ".")
                    .remedy(Remedy.choice(large.tooWide() > 0 && staves()
                            ? "ask for more `staves`, or for narrower ones with `widest`"
                            : "make it smaller, or take a larger board"));
            case Unplaced.Reason.DefectInTheWay flaw -> finding
                    .found("On `" + board(flaw.stockId()) + "` a flaw stands in the way. Alone it would fit if it were "
                            + text(flaw.shorterBy()) + " shorter, or " + text(flaw.narrowerBy()) + " narrower.")
                    .remedy(Remedy.choice(staves() ? "ask for narrower staves with `widest`, or take another board"
                            : "make it smaller, or take another board"));
            case Unplaced.Reason.NoRoom full -> finding
                    .found((full.certain() ? "It fits alone, and it is certain that not all parts fit together"
                            : "It fits alone, and no place was found for it beside the others")
                            + "; one more board like `" + board(full.moreOf()) + "` would hold it.")
                    .remedy(Remedy.choice("add a board like `" + board(full.moreOf()) + "`"));
            case Unplaced.Reason.NotWorthIt() -> finding.found("Other parts took its place.");
        }
        return finding.build();
    }

    private boolean staves() {
        return blank.members().getFirst().stave() != Blank.Member.WHOLE && !blank.resawn();
    }

    private String what() {
        String part = "`" + blank.parts().getFirst() + "`";
        return staves() ? "stave " + blank.members().getFirst().stave() + " of " + part
                : blank.parts().size() == 1 ? "the piece that is resawn into the two staves of " + part
                        : "the piece that is resawn into `" + String.join("` and `", blank.parts()) + "`";
    }

    private String because() {
        return staves()
                ? "Staves are laid out with what their edges lose to the plane, and so thick that the glued part can be"
                        + " planed once more."
                : "Two leaves that open like a book come from one piece, which has to be as thick as both, with the saw"
                        + " cut and what smooths the sawn faces between them.";
    }

    private void thick(Finding.Builder finding) {
        Length wanted = parts.stream().map(Staving::thickness).max(Comparator.naturalOrder()).orElse(Length.ZERO);
        Optional<Rack.Leaf> thickest = rack.leaves().values().stream()
                .filter(leaf -> !leaf.of().board().sheet())
                .filter(leaf -> parts.stream().allMatch(part -> Leaves.mayComeFrom(part, leaf.of().source())))
                .max(Comparator.comparing(leaf -> leaf.of().thickness()));
        if (thickest.isEmpty()) {
            finding.found("No board may give it.").remedy(Remedy.choice("name a solid board with `from`"));
            return;
        }
        Leaves leaves = thickest.get().of();
        Length all = wanted.times(blank.members().size())
                .plus(Leaves.between(leaves.board()).times(blank.members().size() - 1L));
        finding.found("It has to be " + format.text(all) + " thick once flat"
                + (blank.resawn() ? ", to give " + blank.members().size() + " of " + format.text(wanted) : "") + "; `"
                + leaves.board().name() + "` gives " + format.text(leaves.thickness()) + ": "
                + format.text(all.minus(leaves.thickness()).max(Length.ZERO)) + " are missing.")
                .related(leaves.source().thickness().at(), "the board's thickness")
                .number("missing", all.minus(leaves.thickness()).toDoubleMm())
                .remedy(Remedy.choice("take a thicker board, or make it thinner"));
    }

    private String board(String id) {
        return rack.leaf(id).of().board().name();
    }

    private String over(long along, String longer, long across, String wider) {
        String one = along > 0 ? text(along) + " " + longer : "";
        String other = across > 0 ? text(across) + " " + wider : "";
        return one + (one.isEmpty() || other.isEmpty() ? "" : " and ") + other;
    }

    private String text(long units) {
        return format.text(Units.length(units));
    }
}

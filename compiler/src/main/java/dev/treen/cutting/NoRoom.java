package dev.treen.cutting;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.model.Measure;
import dev.treen.model.Takes;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.yield.Cancel;
import dev.treen.yield.Unplaced;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Says why a part is on no board: which board came nearest, what stands in the way there, and which change would let it in.
 */
final class NoRoom {
    /** Changes are looked for and laid out anew for so many parts; what helps one mostly helps the next. */
    private static final int MOST_TRIED = 3;

    private static final int MOST_REMEDIES = 3;

    /** A measure that is a figure by itself, as {@code 400}, {@code 15 3/4in}: it can be written anew. */
    private static final Pattern FIGURE = Pattern.compile("[0-9.]+( [0-9]+/[0-9]+|/[0-9]+)? ?(mm|cm|m|in|ft)?");

    private final Joined joined;
    private final Map<String, FinishedPart> parts;
    private final Rack rack;
    private final Wished wished;
    private final LengthFormat format;
    private final Nearest nearest;
    private final Cancel cancel;
    private final Changed changed;
    private int tried;

    NoRoom(Joined joined, Rack rack, Wished wished, Nearest nearest, Cancel cancel) {
        this.changed = new Changed(joined, wished, rack);
        this.nearest = nearest;
        this.cancel = cancel;
        this.joined = joined;
        // Of a large project thousands may find no room.
        this.parts = joined.made().stream()
                .collect(Collectors.toMap(part -> part.part().name(), part -> part, (first, second) -> first));
        this.rack = rack;
        this.wished = wished;
        this.format = joined.project().settings().format();
    }

    Optional<Finding> of(Unplaced unplaced) {
        Blank blank = rack.blank(unplaced.pieceId());
        return blank.plain()
                ? Optional.ofNullable(parts.get(unplaced.pieceId())).map(part -> finding(part, unplaced.reason()))
                : Optional.of(new NoRoomForBlank(joined, rack, blank).finding(unplaced.reason()));
    }

    /** The marks of a rule on which changes lie: tenths of a millimetre, or sixteenths of an inch. */
    static Length step(Joined joined) {
        return joined.project().settings().units() == Unit.IN ? Length.ofInches(1, 16)
                : Length.ofMm(BigFraction.of(1, 10));
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
        boolean trying = nearest.worthTrying() && !cancel.asked() && tried++ < MOST_TRIED;
        Changes changes = trying ? changes(part, reason) : Changes.NONE;
        int own = switch (reason) {
            case Unplaced.Reason.NoStockAccepted() -> tooThick(part, finding);
            case Unplaced.Reason.TooLarge large -> tooLarge(part, large, changes, finding);
            case Unplaced.Reason.DefectInTheWay flaw -> flawed(part, flaw, changes, trying, finding);
            case Unplaced.Reason.NoRoom full -> full(full, changes, trying, finding);
            case Unplaced.Reason.NotWorthIt() -> {
                finding.found("Other parts took its place.");
                yield 0;
            }
        };
        changes.remedies().stream().limit(MOST_REMEDIES - own).forEach(finding::remedy);
        changes.shorter().ifPresent(by -> finding.number("shorterBy", by.toDoubleMm()));
        changes.narrower().ifPresent(by -> finding.number("narrowerBy", by.toDoubleMm()));
        return finding.build();
    }

    /**
     * What would let a part in.
     *
     * @param sentence the changes of its size in words, with a blank before it; empty where there are none
     */
    private record Changes(
            Optional<Length> shorter, Optional<Length> narrower, String sentence, List<Remedy> remedies) {
        static final Changes NONE = new Changes(Optional.empty(), Optional.empty(), "", List.of());
    }

    private Changes changes(FinishedPart part, Unplaced.Reason reason) {
        if (reason instanceof Unplaced.Reason.NotWorthIt) {
            return Changes.NONE;
        }
        Optional<String> other = nearest.otherBoard(part);
        List<Remedy> remedies = new ArrayList<>();
        other.ifPresent(board -> remedies.add(Remedy.choice("take it `from " + board + "`, where it has room")));
        if (reason instanceof Unplaced.Reason.NoStockAccepted) {
            return new Changes(Optional.empty(), Optional.empty(), "", remedies);
        }
        Optional<Length> shorter = nearest.shorter(part);
        Optional<Length> narrower = nearest.narrower(part);
        List<String> smaller = new ArrayList<>();
        shorter.ifPresent(by -> {
            smaller.add(format.text(by) + " shorter");
            remedies.add(smaller(
                    part, part.part().length(), part.part().overall().length() ? part.length() : part.part().length(),
                    by, "shorter"));
        });
        narrower.ifPresent(by -> {
            smaller.add(format.text(by) + " narrower");
            remedies.add(smaller(
                    part, part.part().width(), part.part().overall().width() ? part.width() : part.part().width(),
                    by, "narrower"));
        });
        String sentence = smaller.isEmpty() ? "" : " It would fit if it were " + String.join(", or ", smaller) + ".";
        boolean sheet = !part.part().sources().isEmpty() && part.part().sources().stream().allMatch(Board::sheet);
        if (sheet && nearest.fitsAcross(part)) {
            remedies.add(Remedy.choice("swap its length and width, if its face grain may run the other way"));
        }
        return new Changes(shorter, narrower, sentence, remedies);
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
        return part.part().anyOf().map(any -> "the boards of `" + any.species() + "`")
                .or(() -> part.part().from().map(b -> "`" + b.name() + "`"))
                .orElse("the boards");
    }

    private String text(long units) {
        return format.text(Units.length(units));
    }

    private static double mm(long units) {
        return (double) units / Units.FINE;
    }

    private int tooThick(FinishedPart part, Finding.Builder finding) {
        Length wanted = part.thickness().value();
        Optional<Rack.Leaf> nearest = rack.leaves().values().stream()
                .filter(leaf -> Leaves.mayComeFrom(part, leaf.of().source()))
                .min((a, b) -> a.of().thickness().minus(wanted).abs()
                        .compareTo(b.of().thickness().minus(wanted).abs()));
        if (nearest.isEmpty()) {
            finding.found("No board may give it.");
            return 0;
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
        return 1;
    }

    private int tooLarge(
            FinishedPart part, Unplaced.Reason.TooLarge large, Changes changes, Finding.Builder finding) {
        Board board = rack.leaf(large.stockId()).of().board();
        String along = large.tooLong() > 0 ? text(large.tooLong()) + " too long" : "";
        String across = large.tooWide() > 0 ? text(large.tooWide()) + " too wide" : "";
        String both = along + (along.isEmpty() || across.isEmpty() ? "" : " and ") + across;
        finding.found("It comes nearest to fitting on `" + board.name() + "`, where it is " + both + "."
                + changes.sentence())
                .related(board.length().at(), "the board's size")
                .number("tooLong", mm(large.tooLong()))
                .number("tooWide", mm(large.tooWide()));
        boolean staves = large.tooWide() > 0 && !board.sheet() && nearest.worthTrying() && !cancel.asked()
                && wished.pairOf(part.part().name()).isEmpty()
                && nearest.fits(part.part().name(), changed.glued(part));
        if (staves) {
            finding.remedy(Remedy.choice("glue it up from staves, which have room: write `glue_up { }` in the part"));
        }
        if (!staves && changes.remedies().isEmpty()) {
            finding.remedy(Remedy.choice("make it smaller, or take a larger board"));
        }
        return staves ? 1 : 0;
    }

    private int flawed(
            FinishedPart whole, Unplaced.Reason.DefectInTheWay flaw, Changes changes, boolean trying,
            Finding.Builder finding) {
        String part = whole.part().name();
        Board board = rack.leaf(flaw.stockId()).of().board();
        List<Defect> single = nearest.worthTrying() ? nearest.inTheWay(part, flaw.stockId()).stream()
                .flatMap(each -> seen(board, each).stream())
                .toList() : List.of();
        Optional<Defect> greatest = seen(board, flaw.defect());
        String what = single.isEmpty() && board.defects().size() > 1 ? "flaws stand in the way together"
                : single.stream().findFirst().or(() -> greatest).map(d -> "a " + d.kind()).orElse("its end")
                        + " stands in the way";
        boolean nowhere = Units.length(flaw.shorterBy()).compareTo(whole.roughLength().value()) >= 0;
        String alone = nowhere ? " No place on it is clear of flaws."
                : changes.sentence().isEmpty()
                        ? " Alone it would fit if it were " + text(flaw.shorterBy()) + " shorter, or "
                                + text(flaw.narrowerBy())
                                + " narrower."
                        : changes.sentence();
        finding.found("On `" + board.name() + "` " + what + "." + alone);
        if (changes.remedies().isEmpty()) {
            finding.remedy(Remedy.choice("make it smaller, or take another board"));
        }
        if (single.isEmpty()) {
            greatest.ifPresent(d -> finding.related(d.span(), "this " + d.kind()));
        }
        single.forEach(d -> finding.related(d.span(), "this " + d.kind()));
        List<Defect> told = single.isEmpty() ? greatest.stream().toList() : single;
        Optional<String> kind = told.stream()
                .map(Defect::kind)
                .filter(found -> mayTake(part, found))
                .distinct()
                .filter(found -> !trying || nearest.fits(part, changed.taking(whole, found)))
                .findFirst();
        kind.ifPresent(flawKind -> finding.remedy(Remedy.choice("say `takes " + flawKind
                + "` in the part, if it may have one where no joint touches it"
                + (trying ? ": it has room then" : ""))));
        return kind.isPresent() ? 1 : 0;
    }

    private boolean mayTake(String part, String kind) {
        return Takes.KINDS.contains(kind) && joined.part(part)
                .filter(own -> own.part().takes().flaws().stream().noneMatch(flaw -> flaw.kind().equals(kind)))
                .isPresent();
    }

    private static Optional<Defect> seen(Board board, dev.treen.yield.Defect flaw) {
        return board.defects().stream().filter(d -> Rack.defect(d).equals(flaw)).findFirst();
    }

    private int full(
            Unplaced.Reason.NoRoom full, Changes changes, boolean trying, Finding.Builder finding) {
        String board = rack.leaf(full.moreOf()).of().board().name();
        finding.found((full.certain()
                ? "It fits alone, and it is certain that not all parts fit together"
                : "It fits alone, and no place was found for it beside the others")
                + "; one more board like `" + board + "` would hold it" + (trying ? more(board) : "") + "."
                + changes.sentence())
                .remedy(Remedy.choice("add a board like `" + board + "`"));
        return 1;
    }

    private String more(String board) {
        Nearest.More more = nearest.more(board);
        if (more.of() == 1) {
            return "";
        }
        if (more.takes() == more.of()) {
            return ", with the other " + (more.of() - 1) + " for which there is no room";
        }
        return "; of the " + more.of() + " parts without room it takes " + more.takes()
                + (more.boards() > 0 ? ", and " + more.boards() + " such boards take all" : "");
    }

    /** Another size, with the text to write where the size is a figure that no other part shares. */
    private Remedy smaller(FinishedPart part, Measure seen, Measure written, Length by, String word) {
        String text = "make it " + format.text(by) + " " + word;
        boolean own = FIGURE.matcher(seen.at().text()).matches()
                && joined.made().stream()
                        .filter(other -> !other.part().is(part.part()))
                        .noneMatch(other -> other.part().length().at().equals(seen.at())
                                || other.part().width().at().equals(seen.at()));
        return own ? Remedy.choice(text, new Edit(
                seen.at(), joined.project().settings().written(written.value().minus(by)))) : Remedy.choice(text);
    }
}

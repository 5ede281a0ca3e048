package dev.treen.cutting;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.GlueUp;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What there is to say of boards and glue-ups once they are divided: hard work, hollow boards, glue lines in the way. */
final class BoardFindings {
    /** Resawing wider than this by hand is hard labour (rules of the trade A-04: common practice, no source). */
    private static final Length WIDE = Length.ofMm(150);

    private final Joined joined;
    private final LengthFormat format;
    private final List<Finding> findings = new ArrayList<>();

    private BoardFindings(Joined joined) {
        this.joined = joined;
        this.format = joined.project().settings().format();
    }

    static List<Finding> of(Joined joined, List<BoardCut> boards, List<Glued> glued, List<Remarks.Hollow> hollow) {
        var all = new BoardFindings(joined);
        all.wideResaw(boards);
        glued.stream().filter(each -> !each.clear()).forEach(all::glueLine);
        glued.forEach(all::tooWide);
        hollow.forEach(all::hollow);
        return all.findings;
    }

    private void wideResaw(List<BoardCut> boards) {
        Set<String> told = new HashSet<>();
        for (BoardCut cut : boards) {
            Board board = cut.board();
            boolean wide = cut.leaves() > 1 && board.width().value().compareTo(WIDE) > 0;
            if (wide && joined.project().settings().hand() && told.add(board.name())) {
                findings.add(Finding.of(
                        CuttingFindings.WIDE_RESAW,
                        board.width().at(),
                        "`" + board.name() + "` is wide to resaw by hand")
                        .label(format.text(board.width().value()) + " to saw through, in " + cut.leaves()
                                + " leaves")
                        .because("Beyond " + format.text(WIDE) + " resawing by hand is hard labour and tends to"
                                + " wander (common practice, no source).")
                        .about(board.name())
                        .remedy(Remedy.choice("crosscut it first, have it resawn, or take thinner boards"))
                        .build());
            }
        }
    }

    private void glueLine(Glued each) {
        findings.add(Finding.of(
                CuttingFindings.GLUE_LINE_CUT,
                each.asked().at(),
                "A glue line of `" + each.part() + "` lies where joints are cut")
                .found("No division into such staves keeps all lines clear of what is cut into it.")
                .because("A groove, a recess or a tenon that is cut along a glue line opens it or shows it"
                        + " (common practice, no source).")
                .about(each.part())
                .remedy(Remedy.choice(each.asked().match() == GlueUp.Match.BOOK
                        ? "move the cut off the middle, or leave out `match book`"
                        : "write another count of `staves`, or a larger `widest`"))
                .build());
    }

    /** A count that was asked for makes staves that are wider than was asked for. */
    private void tooWide(Glued each) {
        Length widest = each.staves().stream().max(Length::compareTo).orElse(Length.ZERO);
        each.asked().widest().filter(asked -> widest.compareTo(asked.value()) > 0)
                .ifPresent(asked -> findings.add(Finding
                        .of(CuttingFindings.STAVES_TOO_WIDE, asked.at(),
                                "So few staves of `" + each.part() + "` are wider than `widest`")
                        .found(each.staves().size() + " of them are up to " + format.text(widest)
                                + " wide; `widest` is "
                                + format.text(asked.value()) + ".")
                        .related(each.asked().at(), "how it is glued up")
                        .about(each.part())
                        .number("widest", widest.toDoubleMm())
                        .remedy(Remedy.choice("leave out `staves`, and the layout takes as many as that needs"))
                        .build()));
    }

    private void hollow(Remarks.Hollow each) {
        Board board = each.board();
        String name = each.part().part().name();
        String rip = joined.project().settings().written(each.rip());
        findings.add(Finding.of(
                CuttingFindings.HOLLOW_BOARD,
                board.cup().orElseThrow().at(),
                "`" + board.name() + "` is too hollow to be planed flat as a whole")
                .found("Flat over its whole width it gives " + format.text(each.whole()) + "; `" + name + "` is "
                        + format.text(each.part().thickness().value()) + " thick. Ripped at " + format.text(each.rip())
                        + ", that piece gives " + format.text(each.ripped()) + ".")
                .because(
                        "A piece of half the width is a quarter as hollow (a sagitta goes with the square of its chord:"
                                + " derived), so less is lost in planing it flat.")
                .related(each.part().thickness().at(), "the part's thickness")
                .about(board.name())
                .about(name)
                .number("whole", each.whole().toDoubleMm())
                .number("ripped", each.ripped().toDoubleMm())
                .remedy(Remedy.choice("rip it before its faces are planed", new Edit(
                        board.cup().orElseThrow().at().endPoint(), "; rip " + rip)))
                .build());
    }
}

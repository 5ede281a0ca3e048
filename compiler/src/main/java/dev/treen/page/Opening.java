package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.drawing.Drawings;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.plan.StepText;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jsoup.nodes.Element;

/** The head of the plan: its title, what it will be, and the main figures. */
final class Opening {
    private Opening() {
    }

    static void write(Page page, Element header) {
        Html.said(header, "p", "A plan to build from", "class", "kicker");
        Element title = Html.add(header, "h1");
        Html.text(Html.add(title, "bdi"), page.plan().title());
        Html.said(header, "p", lede(page), "class", "lede");
        Element figure = Html.add(header, "figure", "class", "hero");
        Optional.ofNullable(page.drawings().sheets().get("assembled")).ifPresentOrElse(
                sheet -> Html.drawing(figure, sheet.cutOut().svg(), "assembled"),
                figure::remove);
        Element facts = Html.add(header, "dl", "class", "facts");
        size(page).ifPresent(size -> fact(facts, "Over all", size));
        fact(facts, "Wood", woods(page));
        fact(facts, "Hands at work", StepText.hours(page.plan().order()));
        fact(facts, "Waiting", StepText.waits(page.plan().order()));
        fact(facts, "Lengths in", page.format().unit()
                + page.beside().map(other -> ", with " + other.unit() + " beside").orElse(""));
        fact(facts, "Room", page.plan().joined().project().settings().climate()
                .map(c -> round(c.humidityLow()) + " to " + round(c.humidityHigh()) + " % relative humidity")
                .orElse(""));
    }

    private static void fact(Element facts, String term, String words) {
        if (!words.isEmpty()) {
            Element each = Html.add(facts, "div");
            Html.said(each, "dt", term);
            Html.said(each, "dd", words);
        }
    }

    private static String lede(Page page) {
        int parts = page.plan().joined().parts().size();
        if (parts == 0) {
            return "The project names no parts yet, so there is nothing to cut or to build.";
        }
        List<String> from = new ArrayList<>();
        long boards = boards(page, false);
        long sheets = boards(page, true);
        if (boards > 0) {
            from.add(count(boards, "board", "boards"));
        }
        if (sheets > 0) {
            from.add(count(sheets, "sheet", "sheets"));
        }
        boolean hand = page.plan().joined().project().settings().hand();
        return count(parts, "part", "parts")
                + (from.isEmpty() ? "" : " from ") + String.join(" and ", from) + ", worked "
                + (hand ? "by hand" : "at machines") + " in "
                + count(page.plan().order().steps().size(), "step", "steps") + ".";
    }

    private static long boards(Page page, boolean sheet) {
        return page.plan().cutting().boards().stream()
                .filter(b -> b.board().sheet() == sheet)
                .map(b -> b.board().name())
                .distinct()
                .count();
    }

    static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    private static String round(double value) {
        return String.valueOf(Math.round(value));
    }

    private static String woods(Page page) {
        TreeSet<String> woods = new TreeSet<>();
        for (BoardCut cut : page.plan().cutting().boards()) {
            wood(cut.board()).ifPresent(woods::add);
        }
        return String.join(", ", woods);
    }

    static Optional<String> wood(Board board) {
        return Optional.of(Woods.name(board)).filter(name -> !name.isEmpty());
    }

    private static Optional<String> size(Page page) {
        List<Placed> placed = Drawings.placed(page.plan().joined());
        return placed.stream().flatMap(p -> p.solid().bounds().stream()).reduce(Box::join)
                .map(box -> page.text(new Size(extent(box, Axis.X), extent(box, Axis.Y), extent(box, Axis.Z)))
                        + ", wide, deep and high");
    }

    private static Length extent(Box box, Axis axis) {
        return Length.ofMm(box.extent(axis));
    }
}

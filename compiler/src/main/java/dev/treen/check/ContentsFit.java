package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.model.Holding;
import dev.treen.model.Holding.Content;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * What a piece is made to hold has to go in, with room on every side to take it out again (rules of the trade F-08:
 * room a side is half of inside less content; below nothing an error, below 1 mm a warning; common practice, no source).
 */
final class ContentsFit implements Check {
    private static final FindingKind DO_NOT_FIT = FindingKind.error("contents-do-not-fit",
            "What it is to hold does not go in");
    private static final FindingKind TIGHT = FindingKind.warning("contents-tight",
            "What it is to hold goes in with hardly any room");

    @Override
    public List<FindingKind> kinds() {
        return List.of(DO_NOT_FIT, TIGHT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        for (Holding holding : joined.project().holdings()) {
            boolean goesIn = Packing.fits(holding.contents(), holding.inside(), Length.ZERO);
            if (!goesIn || !Packing.fits(holding.contents(), holding.inside(), holding.room())) {
                findings.add(finding(holding, goesIn, settings));
            }
        }
        return findings;
    }

    private static Finding finding(Holding holding, boolean goesIn, Settings settings) {
        String things = String.join(", ", holding.contents().stream().map(ContentsFit::name).toList());
        Finding.Builder finding = Finding.of(
                goesIn ? TIGHT : DO_NOT_FIT,
                holding.contents().getFirst().at(),
                goesIn
                        ? things + " goes into `" + holding.what() + "` with hardly any room"
                        : things + " does not go into `" + holding.what() + "`")
                .related(holding.insideAt(), "the room inside")
                .found("Inside it has " + size(holding.inside(), settings) + "; "
                        + String.join(", ", holding.contents().stream().map(c -> sized(c, settings)).toList())
                        + (goesIn
                                ? ", and " + Amounts.text(holding.room(), settings) + " is wanted free on every side."
                                : "."))
                .because("It is turned round but not laid on its side, and stands in rows and layers. What fits to the"
                        + " hair goes in once, and comes out with pliers.")
                .about(holding.what());
        if (holding.contents().size() == 1) {
            remedy(holding, finding, settings);
        }
        return finding.build();
    }

    private static String name(Content content) {
        return (content.count() > 1 ? content.count() + " x " : "") + "`" + content.name() + "`";
    }

    private static String sized(Content content, Settings settings) {
        return "the `" + content.name() + "` is "
                + size(List.of(content.length(), content.width(), content.height()), settings)
                + (content.count() > 1 ? ", and there are " + content.count() : "");
    }

    private static String size(List<Length> measures, Settings settings) {
        return String.join(" x ", measures.stream().map(m -> Amounts.text(m, settings)).toList());
    }

    /** A room in which one kind of thing stands in one row with the room that is wanted. */
    private static void remedy(Holding holding, Finding.Builder finding, Settings settings) {
        Content content = holding.contents().getFirst();
        List<Length> one = List.of(content.length(), content.width(), content.height());
        List<Length> need = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            Length row = one.get(axis).times(axis == 0 ? content.count() : 1);
            Length wanted = row.plus(holding.room().times(2)).roundUpTo(Amounts.step(settings));
            need.add(holding.inside().get(axis).max(wanted));
        }
        String text = String.join(" x ", need.stream().map(m -> Amounts.written(m, settings)).toList());
        boolean figures = holding.insideAt().text().matches("[0-9./ x]+");
        finding.remedy(figures
                ? Remedy.choice("make the inside " + text, new Edit(holding.insideAt(), text))
                : Remedy.choice("make the inside at least " + text));
    }
}

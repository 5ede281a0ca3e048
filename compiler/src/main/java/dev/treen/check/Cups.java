package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Loose;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Nature;
import dev.treen.model.GlueUp;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.wood.Cupping;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A flat-sawn board goes hollow through its rings (rule of the trade M-17: the sense from Fairham, the depth derived, 0.5 mm
 * on a free face and 0.2 on a lid common practice without a source). Only where the board says how far its heart is.
 */
final class Cups implements Check {
    static final FindingKind CUPS = FindingKind.warning("cups", "A flat-sawn part goes hollow");

    @Override
    public List<FindingKind> kinds() {
        return List.of(CUPS);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        Set<String> lids = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            boolean laid = Loose.in(made.joint())
                    && made.joint().word("hinge").isEmpty()
                    && made.joint().word("runs").isEmpty();
            if (laid || made.joint().given("slide").isPresent()) {
                lids.add(made.joint().left().name());
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (FinishedPart part : joined.parts()) {
            Optional<Measure> heart = part.part().sources().stream()
                    .filter(b -> !b.sheet())
                    .flatMap(b -> b.heart().stream())
                    .min(Comparator.comparing(Measure::value));
            boolean flat = part.part().rings().degrees() <= Figures.standard().value("rings.flat.to")
                    && part.part().rings().staves().isEmpty();
            if (heart.isPresent() && flat) {
                judged(part, heart.get(), lids.contains(part.part().name()), settings).ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** What hollows as one: a stave, as wide as it can be since there are two at the least, or the whole. */
    private static double stave(FinishedPart part, GlueUp glue) {
        double whole = part.width().value().toDoubleMm();
        double widest = glue.widest().map(w -> w.value().toDoubleMm()).orElse(whole);
        return switch (glue.order()) {
            case ALIKE -> whole;
            case ALTERNATE -> Math.min(widest, whole / glue.staves().orElse(2));
        };
    }

    private static Cupping.Cup cup(double width, double heart, Nature nature) {
        double bench = nature.seasons().bench();
        Cupping.Cup dry = Cupping.ofRings(
                width, heart, nature.across().from(), bench, nature.seasons().driest());
        Cupping.Cup wet = Cupping.ofRings(
                width, heart, nature.across().from(), bench, nature.seasons().wettest());
        return dry.depthMm() >= wet.depthMm() ? dry : wet;
    }

    private static Verdict verdict(Cupping.Cup cup, boolean lid) {
        return lid ? Cupping.judgeLid(cup, Figures.standard()) : Cupping.judge(cup, Figures.standard());
    }

    private static Optional<Finding> judged(FinishedPart part, Measure heart, boolean lid, Settings settings) {
        Nature nature = Nature.of(part.part(), settings);
        double far = heart.value().toDoubleMm();
        // Staves hollow each by itself; laid up and down by turns, the whole stays flat.
        double width = part.part().glueUp().map(glue -> stave(part, glue))
                .orElseGet(() -> part.width().value().toDoubleMm());
        Cupping.Cup cup = cup(width, far, nature);
        if (verdict(cup, lid).grade() == Verdict.Grade.FINE) {
            return Optional.empty();
        }
        double stave = width;
        while (stave > 5 && verdict(cup(stave, far, nature), lid).grade() != Verdict.Grade.FINE) {
            stave -= 5;
        }
        String name = part.part().name();
        double limit = Figures.standard().value(lid ? "cups.lid.warning" : "cups.warning");
        return Optional.of(Finding.of(CUPS, part.part().width().at(), "`" + name + "` will go hollow")
                .label("so wide of one flat-sawn board")
                .found("Its face comes to be " + Amounts.fine(cup.depthMm(), settings) + " hollow, on the side "
                        + (cup.hollow() == Cupping.Hollow.BARK_SIDE ? "of the bark, when dry"
                                : "of the heart, when damp")
                        + "; " + Amounts.fine(limit, settings) + " shows" + (lid ? " on a lid." : "."))
                .because("It is " + nature.wood() + ", cut " + Amounts.text(heart.value(), settings)
                        + " from the heart of its tree, and moves more along its rings than across them ("
                        + nature.across().citation().source() + ").")
                .related(heart.at(), "the heart of its board")
                .about(name)
                .number("hollow", cup.depthMm())
                .number("stave", stave)
                .remedy(Remedy.choice("glue it up from staves: `glue_up { widest "
                        + Amounts.written(Length.nearest(stave, Length.ofMm(1)), settings) + " }` in the part"))
                .remedy(Remedy.choice("take quartered stock, which stays flat"))
                .build());
    }
}

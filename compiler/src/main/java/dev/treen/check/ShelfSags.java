package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shelf that sags so that one sees it, or more than the trade allows (rules S-01 and S-02: the formula from the Wood
 * Handbook, L/144 from the Architectural Woodwork Standards 2009, L/384 from makers' pages). Where the project does not
 * say what it carries, only the trade's own limit under the usual load is worth a word.
 */
final class ShelfSags implements Check {
    static final FindingKind SAGS = FindingKind.warning("shelf-sags", "A shelf sags under its load");

    @Override
    public List<FindingKind> kinds() {
        return List.of(SAGS);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        for (Spans.Span span : Spans.of(joined)) {
            Sagging.of(span).filter(ShelfSags::tooMuch).ifPresent(s -> findings.add(finding(s, settings)));
        }
        return findings;
    }

    private static boolean tooMuch(Sagging sagging) {
        return switch (sagging.sag().verdict().grade()) {
            case FINE, NOTE -> false;
            case WARNING -> !sagging.load().assumed();
            case ERROR -> true;
        };
    }

    private static Finding finding(Sagging sagging, Settings settings) {
        Part part = sagging.span().part().part();
        boolean over = sagging.sag().verdict().grade() == Verdict.Grade.ERROR;
        double span = sagging.span().spanMm();
        double limit = span / Figures.standard().value(over && sagging.load().assumed()
                ? "shelf-sags.error"
                : "shelf-sags.warning");
        Finding.Builder finding = Finding.of(
                SAGS,
                part.thickness().at(),
                over
                        ? "`" + part.name() + "` will sag more than a shelf may"
                        : "`" + part.name() + "` will sag so that one sees it")
                .severity(over && !sagging.load().assumed() ? Severity.ERROR : Severity.WARNING)
                .label("too thin for its span")
                .found("After years it hangs " + Amounts.fine(sagging.sag().laterMm(), settings) + " in the middle of "
                        + Amounts.text(part.length().value(), settings) + ", one part in "
                        + DecimalText.write(sagging.sag().spanOverSag(), 0) + "; "
                        + Amounts.fine(limit, settings) + " is "
                        + (over && sagging.load().assumed() ? "the limit of the trade." : "what the eye does not see."))
                .because("It carries " + sagging.load().words() + (sagging.load().assumed() ? ", which is assumed" : "")
                        + "; " + SagFact.source(sagging) + ". Where people stand or lie on it, or it hangs over heads,"
                        + " the local code and licensed practice decide.")
                .related(part.length().at(), "it is free over this length")
                .about(part.name())
                .number("sag", sagging.sag().laterMm())
                .number("limit", limit)
                .number("load", sagging.load().newtons());
        part.service().carries().ifPresent(c -> finding.related(c.at(), "its load"));
        thicker(sagging, limit, settings).ifPresent(thick -> finding.remedy(remedy(part.thickness(), thick, settings)));
        return finding
                .remedy(Remedy.choice("glue a lipping on edge under its front: it stiffens most for its weight"))
                .remedy(Remedy.choice(sagging.load().assumed()
                        ? "say what it carries, as `carries books`, or support it in the middle"
                        : "support it in the middle, or make it shorter"))
                .build();
    }

    /** Another thickness changes what the shelf is let into, so a person has to choose it. */
    private static Remedy remedy(Measure thickness, Length thick, Settings settings) {
        String figure = Amounts.written(thick, settings);
        return Remedy.choice("make it " + figure + " thick", new Edit(thickness.at(), figure));
    }

    /** The least thickness on a mark of the rule that stays within the limit. */
    private static Optional<Length> thicker(Sagging sagging, double limit, Settings settings) {
        Length step = Amounts.step(settings);
        Length thick = sagging.span().part().part().thickness().value().roundUpTo(step);
        for (int i = 0; i < 200; i++) {
            thick = thick.plus(step);
            if (sagging.thick(thick.toDoubleMm()).sag().laterMm() <= limit) {
                return Optional.of(thick);
            }
        }
        return Optional.empty();
    }
}

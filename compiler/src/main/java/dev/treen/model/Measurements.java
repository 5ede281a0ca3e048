package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the maker measured. The project is evaluated twice: as it was planned, and with the measured values in the place
 * of the planned ones; the difference is the drift, and what follows from it.
 */
final class Measurements {
    private final Session session;
    private final Expressions expressions;
    private final Map<String, List<MeasuredValues.Taken>> byPath = new LinkedHashMap<>();
    private final List<Target> targets = new ArrayList<>();

    Measurements(Session session, Expressions expressions) {
        this.session = session;
        this.expressions = expressions;
    }

    /** A planned value that has been measured; {@code part} where it is a part's own size. */
    record Target(
            String name,
            String path,
            int which,
            Optional<String> part,
            String prefix,
            Length planned,
            Length measured,
            Span at) {}

    /** Finds what {@code pending} measures, in the project as planned. */
    void find(Sequence.ToMeasure pending) {
        session.within(pending.scope().instance(), () -> find(pending.statement(), pending.scope()));
    }

    private void find(Statement.Measured statement, Scope scope) {
        Derived what = expressions.evaluate(statement.what(), scope);
        Derived value = expressions.evaluate(statement.value(), scope);
        if (what.value() instanceof Datum.Unknown || value.value() instanceof Datum.Unknown) {
            return;
        }
        Optional<Length> planned = Arithmetic.length(what.value());
        Optional<Length> length = Arithmetic.length(value.value());
        Optional<Target> target = planned.flatMap(p -> length.flatMap(
                l -> target(statement.what(), scope, p, l, statement.value().span())));
        if (length.isEmpty() || length.get().signum() <= 0) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND, statement.value().span(), "`measured` wants a length above zero")
                    .found("Found " + Arithmetic.phrase(value.value()) + ".")
                    .build());
        } else if (target.isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND,
                    statement.what().span(),
                    "`" + statement.what().span().text() + "` is nothing that can be measured")
                    .found("A length can be: a `let`, a parameter, the length, width or thickness of a part.")
                    .build());
        } else {
            take(target.get());
        }
    }

    private void take(Target target) {
        List<MeasuredValues.Taken> taken = byPath.computeIfAbsent(target.path(), p -> new ArrayList<>());
        if (taken.stream().anyMatch(t -> t.which() == target.which())) {
            session.add(Finding.of(
                    ModelFindings.GIVEN_TWICE, target.at(), "`" + target.name() + "` is measured twice")
                    .found("The first figure counts.")
                    .build());
            return;
        }
        taken.add(new MeasuredValues.Taken(target.which(), target.measured(), target.at()));
        targets.add(target);
    }

    private Optional<Target> target(Expr what, Scope scope, Length planned, Length measured, Span at) {
        String name = what.span().text();
        Optional<Target> whole = expressions.entry(what, scope).flatMap(Scope.Entry::held)
                .map(cell -> new Target(
                        name, cell.path(), -1, Optional.empty(), prefix(cell.path()), planned, measured, at));
        if (whole.isPresent() || !(what instanceof Expr.Member member)) {
            return whole;
        }
        int which = Size.NAMES.indexOf(member.name().text());
        Optional<Scope.Entry> owner = expressions.entry(member.of(), scope);
        if (which < 0 || owner.isEmpty()) {
            return Optional.empty();
        }
        if (owner.get() instanceof PartEntry part) {
            return Optional.of(new Target(
                    name,
                    part.measurePath(which),
                    -1,
                    Optional.of(part.path()),
                    part.scope().prefix(),
                    planned,
                    measured,
                    at));
        }
        return owner.get().held()
                .map(cell -> new Target(
                        name, cell.path(), which, Optional.empty(), prefix(cell.path()), planned, measured, at));
    }

    private static String prefix(String path) {
        return path.substring(0, path.lastIndexOf('.') + 1);
    }

    /** The values to take in the place of those of {@code planned}. */
    MeasuredValues values(Project planned) {
        Map<String, Part> parts = new LinkedHashMap<>();
        planned.parts().forEach(part -> parts.put(part.name(), part));
        return new MeasuredValues(Map.copyOf(byPath), parts);
    }

    /** What the measurements mean for the parts: {@code before} as planned, {@code after} with what was measured. */
    List<Measurement> report(Project before, Project after, Session to) {
        List<Measurement> all = new ArrayList<>();
        for (Target target : targets) {
            Set<String> made = made(target, after);
            all.add(new Measurement(
                    target.name(), target.planned(), target.measured(), target.at(), List.copyOf(made)));
            report(target, made, before, after, to);
        }
        return all;
    }

    /**
     * The parts that must be there before anything can be measured: the part itself, with those that it enters; for any
     * other value, the parts of the same thing that others enter or that meet as equals, since they bound what is
     * measured. Common practice, no source.
     */
    private static Set<String> made(Target target, Project project) {
        Set<String> made = new LinkedHashSet<>();
        target.part().ifPresent(made::add);
        for (Joint joint : project.joints()) {
            if (target.part().isPresent()) {
                if (joint.into() && joint.left().name().equals(target.part().get())) {
                    made.add(joint.right().name());
                }
                continue;
            }
            if (joint.right().name().startsWith(target.prefix())) {
                made.add(joint.right().name());
            }
            if (!joint.into() && joint.left().name().startsWith(target.prefix())) {
                made.add(joint.left().name());
            }
        }
        return made;
    }

    private void report(Target target, Set<String> made, Project before, Project after, Session to) {
        LengthFormat format = after.settings().format() instanceof LengthFormat.Metric
                ? new LengthFormat.Metric(2)
                : after.settings().format();
        List<Change> changes = changes(target, before, after, format);
        List<Change> ofMade = changes.stream()
                .filter(change -> made.contains(change.part().name()))
                .toList();
        if (!ofMade.isEmpty()) {
            alreadyMade(target, ofMade, to);
            return;
        }
        drift(target, changes.stream().map(Change::text).toList(), format, to);
    }

    /** A size of {@code part} that a measurement changes. */
    private record Change(Part part, Measure now, String text) {}

    private static List<Change> changes(Target target, Project before, Project after, LengthFormat format) {
        List<Change> changes = new ArrayList<>();
        Map<String, Part> planned = new LinkedHashMap<>();
        before.parts().forEach(part -> planned.put(part.name(), part));
        for (Part part : after.parts()) {
            Part was = planned.get(part.name());
            boolean own = target.part().filter(part.name()::equals).isPresent();
            for (int which = 0; which < 3 && was != null && !own; which++) {
                Measure now = part.measure(which);
                if (!now.value().equals(was.measure(which).value())
                        && MeasuredValues.restsOn(now.how(), target.at())) {
                    changes.add(new Change(part, now, part.name() + "." + Size.NAMES.get(which) + " becomes "
                            + format.text(now.value()) + " instead of " + format.text(was.measure(which).value())));
                }
            }
        }
        return changes;
    }

    private static void alreadyMade(Target target, List<Change> changes, Session to) {
        List<String> names = changes.stream()
                .map(change -> "`" + change.part().name() + "`")
                .distinct()
                .toList();
        Change first = changes.getFirst();
        Finding.Builder finding = Finding.of(
                ModelFindings.ALREADY_MADE,
                target.at(),
                String.join(", ", names) + " would change, but must be made before `" + target.name()
                        + "` can be measured")
                .found("With this figure " + listed(changes.stream().map(Change::text).toList()) + ".")
                .because("Wood that has been cut keeps its size. Measure the part itself, as `" + first.part().name()
                        + ".length`, or give what is fitted later a `let` of its own and measure that.");
        changes.forEach(change -> finding.about(change.part().name()));
        to.add(finding.build());
    }

    private static void drift(Target target, List<String> follows, LengthFormat format, Session to) {
        Length off = target.measured().minus(target.planned());
        if (off.isZero()) {
            return;
        }
        boolean far = off.abs().times(10).compareTo(target.planned().abs()) > 0;
        Finding.Builder finding = Finding.of(
                far ? ModelFindings.MEASURED_FAR_OFF : ModelFindings.MEASURED,
                target.at(),
                "`" + target.name() + "` came out " + format.text(off.abs())
                        + (off.signum() < 0 ? " less" : " more") + " than planned")
                .found("Planned " + format.text(target.planned()) + ", measured " + format.text(target.measured()) + "."
                        + (follows.isEmpty() ? " Nothing else rests on it." : " So " + listed(follows) + "."))
                .number("planned", target.planned().toDoubleMm())
                .number("measured", target.measured().toDoubleMm());
        target.part().ifPresent(finding::about);
        if (far) {
            finding.because("That is more than a tenth of it: a slip of the pen, or of the unit?");
        }
        to.add(finding.build());
    }

    private static String listed(List<String> changes) {
        int most = 6;
        String shown = String.join(", ", changes.subList(0, Math.min(most, changes.size())));
        return changes.size() > most ? shown + " and " + (changes.size() - most) + " more" : shown;
    }
}

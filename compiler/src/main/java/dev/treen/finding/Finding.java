package dev.treen.finding;

import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One thing that Treen has to say: what, where, by how much, why it matters at the bench, how to mend it.
 *
 * @param kind the code, from which page, editor link and {@code accept} follow
 * @param severity usually the kind's
 * @param headline stands alone in a list; names the maker's own part, board or joint
 * @param at the smallest place that shows the fault
 * @param label reads on from the marked text; may be empty
 * @param related the other places that took part
 * @param found the numbers: needed, found, difference, with units; may be empty
 * @param because why it matters at the bench, and what was assumed; may be empty
 * @param remedies at most three, cheapest in wood and time first
 * @param subjects dotted names of the parts, boards or joints it is about, for {@code accept … on …}
 * @param numbers the figures behind it by name, in millimetres, percent or as named, for programs
 */
public record Finding(
        FindingKind kind,
        Severity severity,
        String headline,
        Span at,
        String label,
        List<Related> related,
        String found,
        String because,
        List<Remedy> remedies,
        List<String> subjects,
        Map<String, Double> numbers) {

    /** Keeps its own copies. */
    public Finding {
        related = List.copyOf(related);
        remedies = List.copyOf(remedies);
        subjects = List.copyOf(subjects);
        numbers = Map.copyOf(numbers);
    }

    /** The stable code. */
    public String code() {
        return kind.code();
    }

    /** The first remedy that an editor may apply without a question. */
    public Optional<Remedy> safeRemedy() {
        return remedies.stream()
                .filter(r -> r.grade() == Remedy.Grade.SAFE && !r.edits().isEmpty())
                .findFirst();
    }

    /** The same with one more way out. */
    public Finding with(Remedy remedy) {
        List<Remedy> more = new ArrayList<>(remedies);
        more.add(remedy);
        return new Finding(kind, severity, headline, at, label, related, found, because, more, subjects, numbers);
    }

    /** The same with a way out that comes before the others. */
    public Finding before(Remedy remedy) {
        List<Remedy> more = new ArrayList<>(List.of(remedy));
        more.addAll(remedies);
        return new Finding(kind, severity, headline, at, label, related, found, because, more, subjects, numbers);
    }

    /** Begins a finding of {@code kind} at {@code at}. */
    public static Builder of(FindingKind kind, Span at, String headline) {
        return new Builder(kind, at, headline);
    }

    /** Collects what a finding has to say; every piece but the first three is optional. */
    public static final class Builder {
        private final FindingKind kind;
        private final Span at;
        private final String headline;
        private Severity severity;
        private String label = "";
        private String found = "";
        private String because = "";
        private final List<Related> related = new ArrayList<>();
        private final List<Remedy> remedies = new ArrayList<>();
        private final List<String> subjects = new ArrayList<>();
        private final Map<String, Double> numbers = new TreeMap<>();

        private Builder(FindingKind kind, Span at, String headline) {
            this.kind = kind;
            this.severity = kind.severity();
            this.at = at;
            this.headline = headline;
        }

        /** Another severity than the kind's. */
        public Builder severity(Severity other) {
            severity = other;
            return this;
        }

        /** What the marked text is, read on from it. */
        public Builder label(String text) {
            label = text;
            return this;
        }

        /** Another place that took part. */
        public Builder related(Span place, String text) {
            related.add(new Related(place, text));
            return this;
        }

        /** The numbers in words. */
        public Builder found(String text) {
            found = text;
            return this;
        }

        /** Why it matters at the bench. */
        public Builder because(String text) {
            because = text;
            return this;
        }

        /** A way out. */
        public Builder remedy(Remedy remedy) {
            remedies.add(remedy);
            return this;
        }

        /** The dotted name of something it is about. */
        public Builder about(String subject) {
            subjects.add(subject);
            return this;
        }

        /** A figure for programs. */
        public Builder number(String name, double value) {
            numbers.put(name, value);
            return this;
        }

        /** The finished finding. */
        public Finding build() {
            return new Finding(
                    kind, severity, headline, at, label, related, found, because, remedies, subjects, numbers);
        }
    }
}

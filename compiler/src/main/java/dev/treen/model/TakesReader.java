package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads which flaws a part may have in it: {@code takes knot, sapwood on back}. */
final class TakesReader {
    private static final String NOTHING = "none";

    private final Session session;

    TakesReader(Session session) {
        this.session = session;
    }

    /** What a block says; nothing where it does not speak of flaws. */
    Optional<Takes> read(Properties properties) {
        List<Properties.Given> given = properties.nearest("takes");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        List<Takes.Taken> found = new ArrayList<>();
        given.forEach(each -> line(each, found));
        return Optional.of(new Takes(found));
    }

    // A face said at the end of a line holds for the kinds before it too: so a plain reader takes it, and it asks for more.
    private void line(Properties.Given given, List<Takes.Taken> found) {
        List<Value> values = given.property().values();
        Optional<Direction> on = Optional.empty();
        List<Takes.Taken> line = new ArrayList<>();
        for (Value value : values.reversed()) {
            Optional<Value.Tail> tail = value.tails().stream().findFirst();
            if (tail.isPresent()) {
                on = face(tail.get());
                if (on.isEmpty()) {
                    return;
                }
            }
            Optional<String> kind = kind(value, values.size() == 1);
            Optional<Direction> face = on;
            kind.filter(word -> !word.equals(NOTHING))
                    .ifPresent(word -> line.add(new Takes.Taken(word, face, value.span())));
        }
        found.addAll(line.reversed());
        if (values.isEmpty()) {
            wrong(Reader.valueSpan(given.property()), "Found nothing.", "", List.of());
        }
    }

    private Optional<String> kind(Value value, boolean alone) {
        String word = value.expr() instanceof Expr.Word(Span span, String name) ? name : "";
        if (Takes.KINDS.contains(word) || (alone && word.equals(NOTHING))) {
            return Optional.of(word);
        }
        if (!(value.expr() instanceof Expr.Missing)) {
            wrong(value.expr().span(), "`" + Reader.cut(value.expr().span().text()) + "` is none of them.", word,
                    Takes.KINDS);
        }
        return Optional.empty();
    }

    private Optional<Direction> face(Value.Tail tail) {
        if (tail.word().text().equals("on")) {
            Optional<Direction> face = tail.argument()
                    .flatMap(expr -> expr instanceof Expr.Word(Span span, String name) ? Direction.named(name)
                            : Optional.empty());
            if (face.isPresent()) {
                return face;
            }
        }
        wrong(tail.word().span(), "A face is said as `on back` or `on bottom`.", "", List.of());
        return Optional.empty();
    }

    private void wrong(Span at, String found, String word, List<String> known) {
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND, at, "`takes` wants " + Shape.Plain.FLAWS.phrase())
                .found(found);
        NearWords.remedies(word, at, known).forEach(finding::remedy);
        session.add(finding.build());
    }

    /** Tells of faces that a part does not have, and leaves them out. */
    Takes seenOn(Takes takes, String part, Optional<Placing> placing) {
        List<Takes.Taken> kept = new ArrayList<>();
        for (Takes.Taken each : takes.flaws()) {
            boolean has = each.on().isEmpty()
                    || placing.filter(p -> p.thickness().axis() == each.on().get().axis()).isPresent();
            if (has) {
                kept.add(each);
            } else {
                session.add(Finding.of(ModelFindings.WRONG_KIND, each.at(),
                        "`" + part + "` has no wide face `" + each.on().get().surface() + "`")
                        .found(placing.map(p -> "Its faces are `" + p.thickness().opposite().surface() + "` and `"
                                + p.thickness().surface() + "`.")
                                .orElse("It has no place, so its faces have no names."))
                        .about(part)
                        .build());
            }
        }
        return new Takes(kept);
    }
}

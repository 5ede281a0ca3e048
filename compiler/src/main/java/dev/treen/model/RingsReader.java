package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Dimension;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads how the growth rings lie: a word, an angle, a range over the width, or the staves of a glue-up. */
final class RingsReader {
    private static final List<String> WORDS = List.of("flat", "rift", "quarter");

    private final Session session;
    private final Reader reader;

    RingsReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
    }

    Optional<Rings> read(Properties.Given given) {
        List<Rings> staves = new ArrayList<>();
        for (Value value : given.property().values()) {
            Optional<Rings> stave = value.expr() instanceof Expr.Between(Span span, Expr low, Expr high)
                    ? between(given, span, low, high)
                    : one(given, value.expr());
            if (stave.isEmpty()) {
                return stave;
            }
            staves.add(stave.get());
        }
        if (staves.isEmpty()) {
            wrong(given, Reader.valueSpan(given.property()), "nothing");
            return Optional.empty();
        }
        return Optional.of(staves.size() == 1 ? staves.getFirst() : Rings.glued(staves));
    }

    private Optional<Rings> between(Properties.Given given, Span at, Expr low, Expr high) {
        Optional<Rings> from = one(given, low);
        Optional<Rings> to = from.isEmpty() ? from : one(given, high);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (from.get().degrees() >= to.get().degrees()) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE, at,
                    "The range of `" + given.property().name().text() + "` runs backwards")
                    .found("It goes from the flatter side to the steeper: 0 to 90°, `flat` to `quarter`.")
                    .remedy(Remedy.choice("write the flatter side first"))
                    .build());
            return Optional.empty();
        }
        return Optional.of(Rings.between(from.get(), to.get()));
    }

    private Optional<Rings> one(Properties.Given given, Expr expr) {
        if (expr instanceof Expr.Missing) {
            return Optional.empty();
        }
        if (expr instanceof Expr.Word word) {
            // Words to angles: rules of the trade, common practice, no source; quarter is taken on the safe side.
            return switch (word.name()) {
                case "flat" -> Optional.of(new Rings(0, "flat", false));
                case "rift" -> Optional.of(new Rings(45, "rift", false));
                case "quarter" -> Optional.of(new Rings(60, "quarter", false));
                default -> wrong(given, expr.span(), "`" + expr.span().text() + "`");
            };
        }
        OptionalDouble angle = reader.natural(given, expr, Dimension.ANGLE, 0, 90, "deg");
        return angle.isPresent()
                ? Optional.of(new Rings(angle.getAsDouble(), DecimalText.write(angle.getAsDouble(), 2) + "°", false))
                : Optional.empty();
    }

    private Optional<Rings> wrong(Properties.Given given, Span at, String found) {
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND,
                at,
                "`" + given.property().name().text() + "` wants " + Shape.Plain.RINGS.phrase())
                .found("Found " + found + ".");
        NearWords.remedies(at.text(), at, WORDS).forEach(finding::remedy);
        session.add(finding.build());
        return Optional.empty();
    }
}

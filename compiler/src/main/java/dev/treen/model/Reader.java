package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.model.Properties.Given;
import dev.treen.quantity.Dimension;
import dev.treen.quantity.Length;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** Reads the value of a property as its schema wants it. What does not fit is reported, and absent from there on. */
final class Reader {
    private static final double RIGHT_ANGLE = 90;
    private static final Length LONGEST = Length.ofMm(100_000);
    /** What a figure is called where a word is wanted. */
    private static final Map<String, String> IN_WORDS = Map.of("0", "none", "1", "one", "2", "two");

    private final Session session;
    private final Expressions expressions;

    Reader(Session session, Expressions expressions) {
        this.session = session;
        this.expressions = expressions;
    }

    /** Where the values of a property stand, or where they are missing. */
    static Span valueSpan(Statement.Property property) {
        if (property.values().isEmpty()) {
            return property.name().span().endPoint();
        }
        return property.values().getFirst().expr().span().to(property.values().getLast().expr().span());
    }

    Optional<Expr> single(Given given, String wanted) {
        List<Value> values = given.property().values();
        if (values.size() == 1) {
            Expr expr = values.getFirst().expr();
            return expr instanceof Expr.Missing ? Optional.empty() : Optional.of(expr);
        }
        if (values.isEmpty() && given.property().body().isEmpty() && given.property().name().text().isEmpty()) {
            return Optional.empty();
        }
        wrongKind(valueSpan(given.property()), given, wanted, values.isEmpty() ? "nothing" : "a list");
        return Optional.empty();
    }

    /**
     * Where a writer changes the value of a property: its own text, or, where a pattern only hands on what its use says,
     * the text of the use.
     */
    Span placeToChange(Given given, Derivation how) {
        Span own = valueSpan(given.property());
        Optional<InstanceEntry> instance = given.scope().instance();
        boolean handedOn = instance.isPresent()
                && given.property().values().size() == 1
                && isReference(given.property().values().getFirst().expr());
        return handedOn ? how.at().filter(at -> !instance.get().pattern().holds(at)).orElse(own) : own;
    }

    private static boolean isReference(Expr expr) {
        return switch (expr) {
            case Expr.Word word -> true;
            case Expr.Member member -> isReference(member.of());
            case Expr.Element element -> isReference(element.of());
            default -> false;
        };
    }

    private void wrongKind(Span at, Given given, String wanted, String found) {
        session.add(Finding.of(
                ModelFindings.WRONG_KIND,
                at,
                "`" + given.property().name().text() + "` wants " + wanted)
                .found("Found " + found + ".")
                .build());
    }

    /** A length, which may be negative: a place. */
    Optional<Measure> length(String label, Expr expr, Scope scope, String what) {
        Derived derived = expressions.reckoned(expr, scope, value -> Arithmetic.length(value).isPresent());
        if (derived.value() instanceof Datum.Unknown) {
            return Optional.empty();
        }
        Optional<Length> length = Arithmetic.length(derived.value());
        if (length.isEmpty()) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "`" + what + "` wants a length")
                    .found("`" + cut(expr.span().text()) + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
            return Optional.empty();
        }
        if (length.get().abs().compareTo(LONGEST) > 0) {
            session.add(Finding.of(
                    ModelFindings.ABSURD_SIZE,
                    expr.span(),
                    "`" + what + "` is longer than any workshop: over 100 m")
                    .build());
            return Optional.empty();
        }
        Measure measure = new Measure(length.get(), expr.span(), derived.how().named(label));
        if (derived.value() instanceof Datum.Bare) {
            session.bare(measure);
        }
        return Optional.of(measure);
    }

    static String cut(String text) {
        return text.length() > 40 ? text.substring(0, 39) + "…" : text;
    }

    /** A length above zero. */
    Optional<Measure> size(String label, Given given) {
        String name = given.property().name().text();
        return single(given, "a length")
                .flatMap(expr -> length(label, expr, given.scope(), name))
                .filter(measure -> positive(measure, name));
    }

    private boolean positive(Measure measure, String what) {
        if (measure.value().signum() > 0) {
            return true;
        }
        session.add(Finding.of(
                ModelFindings.ABSURD_SIZE,
                measure.at(),
                "`" + what + "` is " + (measure.value().isZero() ? "zero" : "less than zero"))
                .because("A piece of wood has to be larger than nothing.")
                .build());
        return false;
    }

    /** A length of zero or more. */
    Optional<Measure> allowance(String label, Given given) {
        String name = given.property().name().text();
        Optional<Measure> read = single(given, "a length").flatMap(expr -> length(label, expr, given.scope(), name));
        if (read.isPresent() && read.get().value().signum() < 0) {
            session.add(Finding.of(
                    ModelFindings.ABSURD_SIZE, read.get().at(), "`" + name + "` is less than zero")
                    .because("Saw and plane only take wood away.")
                    .build());
            return Optional.empty();
        }
        return read;
    }

    /** {@code count} measures above zero, from {@code a x b x c}. */
    Optional<List<Measure>> sizes(Given given, int count) {
        String name = given.property().name().text();
        Optional<Expr> expr = single(given, count == 3 ? Shape.Plain.SIZE_3.phrase() : Shape.Plain.SIZE_2.phrase());
        if (expr.isEmpty()) {
            return Optional.empty();
        }
        if (expr.get() instanceof Expr.Sizes sizes && sizes.measures().size() == count) {
            List<Measure> measures = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                Expr each = sizes.measures().get(i);
                length(dev.treen.quantity.Size.NAMES.get(i), each, given.scope(), name)
                        .filter(m -> positive(m, name))
                        .ifPresent(measures::add);
            }
            return measures.size() == count ? Optional.of(measures) : Optional.empty();
        }
        Derived derived = expressions.evaluate(expr.get(), given.scope());
        if (derived.value() instanceof Datum.Sizes(List<Datum> found) && found.size() == count) {
            List<Measure> measures = new ArrayList<>();
            for (Datum each : found) {
                Arithmetic.length(each)
                        .map(l -> new Measure(l, expr.get().span(), derived.how()))
                        .filter(m -> positive(m, name))
                        .ifPresent(measures::add);
            }
            return measures.size() == count ? Optional.of(measures) : Optional.empty();
        }
        if (!(derived.value() instanceof Datum.Unknown)) {
            wrongKind(
                    expr.get().span(),
                    given,
                    count == 3 ? Shape.Plain.SIZE_3.phrase() : Shape.Plain.SIZE_2.phrase(),
                    Arithmetic.phrase(derived.value()));
        }
        return Optional.empty();
    }

    /** {@code count} lengths with commas between. */
    Optional<List<Length>> point(Given given, int count) {
        List<Value> values = given.property().values();
        String name = given.property().name().text();
        if (values.size() != count) {
            wrongKind(
                    valueSpan(given.property()),
                    given,
                    count == 3 ? Shape.Plain.POINT_3.phrase() : Shape.Plain.POINT_2.phrase(),
                    values.size() == 1 ? "one value" : values.size() + " values");
            return Optional.empty();
        }
        List<Length> lengths = new ArrayList<>();
        for (Value value : values) {
            if (!(value.expr() instanceof Expr.Missing)) {
                length(name, value.expr(), given.scope(), name).ifPresent(m -> lengths.add(m.value()));
            }
        }
        return lengths.size() == count ? Optional.of(lengths) : Optional.empty();
    }

    /** One of {@code words}. */
    Optional<String> word(Given given, List<String> words) {
        String wanted = new Shape.OneOf(words).phrase();
        Optional<Expr> expr = single(given, wanted);
        if (expr.isEmpty()) {
            return Optional.empty();
        }
        if (expr.get() instanceof Expr.Word word && words.contains(word.name())) {
            return Optional.of(word.name());
        }
        Optional<String> handedOn = handedOn(expr.get(), given.scope());
        if (handedOn.filter(words::contains).isPresent()) {
            return handedOn;
        }
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND,
                expr.get().span(),
                "`" + given.property().name().text() + "` wants " + wanted)
                .found("Found `" + cut(expr.get().span().text()) + "`.");
        String text = expr.get().span().text();
        NearWords.remedies(text, expr.get().span(), words).forEach(finding::remedy);
        Optional.ofNullable(IN_WORDS.get(text))
                .filter(words::contains)
                .ifPresent(said -> finding.remedy(
                        Remedy.safe("write `" + said + "`", new Edit(expr.get().span(), said))));
        session.add(finding.build());
        return Optional.empty();
    }

    /** Whether the value is left to Treen, here or by a parameter that is handed on. */
    private boolean leavesOpen(Expr expr, Scope scope) {
        return Auto.said(expr) || handedOn(expr, scope).filter(Auto.WORD::equals).isPresent();
    }

    /** The word that a parameter of a pattern stands for. */
    private Optional<String> handedOn(Expr expr, Scope scope) {
        boolean named = scope.instance().isPresent()
                && (isReference(expr) || expr instanceof Expr.Choice)
                && (!(expr instanceof Expr.Word word) || scope.find(word.name()).isPresent());
        return named && expressions.evaluate(expr, scope).value() instanceof Datum.Word(String word)
                ? Optional.of(word)
                : Optional.empty();
    }

    /** Any word that means itself. */
    Optional<Expr.Word> anyWord(Given given, String wanted) {
        Optional<Expr> expr = single(given, wanted);
        if (expr.isPresent() && !(expr.get() instanceof Expr.Word)) {
            wrongKind(expr.get().span(), given, wanted, "`" + cut(expr.get().span().text()) + "`");
        }
        return expr.flatMap(e -> e instanceof Expr.Word word ? Optional.of(word) : Optional.empty());
    }

    /** The dotted name of the part that is named. */
    private Optional<String> partName(Given given, String wanted) {
        Optional<Expr> expr = single(given, wanted);
        if (expr.isEmpty()) {
            return Optional.empty();
        }
        Datum named = expressions.evaluate(expr.get(), given.scope()).value();
        if (named instanceof Datum.Thing(String path, Datum.Thing.Kind kind) && kind == Datum.Thing.Kind.PART) {
            return Optional.of(path);
        }
        if (!(named instanceof Datum.Unknown)) {
            wrongKind(expr.get().span(), given, wanted, Arithmetic.phrase(named));
        }
        return Optional.empty();
    }

    /** A number of one dimension between two bounds, in base units; percent comes out as percent. */
    OptionalDouble natural(Datum value, Given given, Span at, Dimension dimension, double low, double high,
            String unit) {
        if (value instanceof Datum.Unknown) {
            return OptionalDouble.empty();
        }
        if (!(value instanceof Datum.Exactly(Quantity quantity)) || quantity.dimension() != dimension) {
            wrongKind(at, given, "a figure in " + unit, Arithmetic.phrase(value));
            return OptionalDouble.empty();
        }
        double amount = quantity.amount().doubleValue() * (dimension == Dimension.NUMBER ? 100 : 1);
        if (amount < low || amount > high) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE,
                    at,
                    "`" + given.property().name().text() + "` is out of its range")
                    .found("It lies from " + trim(low) + " to " + trim(high) + " " + unit + "; found " + trim(amount)
                            + ".")
                    .build());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(amount);
    }

    private static String trim(double value) {
        return dev.treen.quantity.DecimalText.write(value, 2);
    }

    /** The same of an expression. */
    OptionalDouble natural(Given given, Expr expr, Dimension dimension, double low, double high, String unit) {
        return natural(value(expr, given.scope()), given, expr.span(), dimension, low, high, unit);
    }

    /** What an expression comes to. */
    Datum value(Expr expr, Scope scope) {
        return expressions.reckoned(expr, scope).value();
    }

    /** A pure number above zero, and not above {@code most}. */
    OptionalDouble number(Given given, Expr expr, double most) {
        Datum value = value(expr, given.scope());
        if (value instanceof Datum.Unknown) {
            return OptionalDouble.empty();
        }
        Optional<Double> number = Arithmetic.number(value).map(n -> n.doubleValue());
        if (number.isEmpty()) {
            wrongKind(expr.span(), given, "a number", Arithmetic.phrase(value));
            return OptionalDouble.empty();
        }
        if (number.get() <= 0 || number.get() > most) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE,
                    expr.span(),
                    "`" + given.property().name().text() + "` is out of its range")
                    .found("It lies above 0 and up to " + dev.treen.quantity.DecimalText.write(most, 5) + "; found "
                            + dev.treen.quantity.DecimalText.write(number.get(), 5) + ".")
                    .build());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number.get());
    }

    /** A whole number from {@code low} to {@code high}. */
    Optional<Integer> count(Given given, int low, int high) {
        Optional<Expr> expr = single(given, Shape.Plain.COUNT.phrase());
        if (expr.isEmpty()) {
            return Optional.empty();
        }
        Datum value = value(expr.get(), given.scope());
        if (value instanceof Datum.Unknown) {
            return Optional.empty();
        }
        Optional<Double> number = Arithmetic.number(value).map(n -> n.doubleValue());
        if (number.isEmpty()) {
            wrongKind(expr.get().span(), given, Shape.Plain.COUNT.phrase(), Arithmetic.phrase(value));
            return Optional.empty();
        }
        if (number.get() < low || number.get() > high || number.get() != Math.rint(number.get())) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE,
                    expr.get().span(),
                    "`" + given.property().name().text() + "` is out of its range")
                    .found("It is a whole number from " + low + " to " + high + "; found "
                            + dev.treen.quantity.DecimalText.write(number.get(), 5) + ".")
                    .build());
            return Optional.empty();
        }
        return Optional.of(number.get().intValue());
    }

    /** Percent, from 0 to {@code high}. */
    Optional<Double> percent(Given given, double high) {
        Optional<Expr> expr = single(given, Shape.Plain.PERCENT.phrase());
        if (expr.isEmpty()) {
            return Optional.empty();
        }
        Datum value = expressions.reckoned(expr.get(), given.scope()).value();
        OptionalDouble read = natural(value, given, expr.get().span(), Dimension.NUMBER, 0, high, "%");
        return read.isPresent() ? Optional.of(read.getAsDouble()) : Optional.empty();
    }

    /** Two natural numbers, the lower first. */
    record Range(double low, double high, Span at) {}

    /** {@code low..high}, or one value for both. */
    Optional<Range> range(Given given, Dimension dimension, double low, double high, String unit) {
        Optional<Expr> expr = single(given, "a range in " + unit);
        if (expr.isEmpty()) {
            return Optional.empty();
        }
        Span at = expr.get().span();
        Datum value = expressions.reckoned(expr.get(), given.scope()).value();
        Datum from = value instanceof Datum.Between(Datum l, Datum h) ? l : value;
        Datum to = value instanceof Datum.Between(Datum l, Datum h) ? h : value;
        OptionalDouble a = natural(from, given, at, dimension, low, high, unit);
        OptionalDouble b = a.isEmpty() ? a : natural(to, given, at, dimension, low, high, unit);
        if (a.isEmpty() || b.isEmpty()) {
            return Optional.empty();
        }
        if (a.getAsDouble() > b.getAsDouble()) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE,
                    at,
                    "The range of `" + given.property().name().text() + "` runs backwards")
                    .remedy(Remedy.choice("write the lower value first"))
                    .build());
            return Optional.empty();
        }
        return Optional.of(new Range(a.getAsDouble(), b.getAsDouble(), at));
    }

    /** Flat, rift, quarter, an angle, or several. */
    Optional<Rings> rings(Given given) {
        return new RingsReader(session, this).read(given);
    }

    /** The setting of a joint's property by its shape. */
    Optional<Setting> setting(Given given, PropertySchema schema) {
        Statement.Property property = given.property();
        Span written = valueSpan(property);
        return switch (schema.shape()) {
            case Shape.LengthOrAuto auto -> single(given, auto.phrase()).flatMap(expr -> {
                if (leavesOpen(expr, given.scope())) {
                    return Optional.of(setting(property, written, Auto.VALUE));
                }
                return length(schema.name(), expr, given.scope(), schema.name())
                        .filter(measure -> notNegative(measure, schema.name()))
                        .map(m -> new Setting(
                                schema.name(),
                                property.name().span(),
                                placeToChange(given, m.how()),
                                Measure.datum(m.value()),
                                m.how()));
            });
            case Shape.OneOf(List<String> words) ->
                word(given, words).map(w -> setting(property, written, new Datum.Word(w)));
            case Shape.Choice(List<String> words, BlockSchema options) ->
                word(given, words).map(w -> setting(property, written, new Datum.Word(w)));
            case Shape.Plain plain -> plainSetting(given, schema, plain, written);
            case Shape.Inner inner -> Optional.empty();
            case Shape.Named named -> Optional.empty();
        };
    }

    private boolean notNegative(Measure measure, String what) {
        if (measure.value().signum() >= 0) {
            return true;
        }
        session.add(Finding.of(ModelFindings.ABSURD_SIZE, measure.at(), "`" + what + "` is less than zero")
                .build());
        return false;
    }

    private static Setting setting(Statement.Property property, Span at, Datum value) {
        return new Setting(
                property.name().text(),
                property.name().span(),
                at,
                value,
                Derivation.written(property.name().text(), value, at));
    }

    private Optional<Setting> plainSetting(Given given, PropertySchema schema, Shape.Plain plain, Span at) {
        Statement.Property property = given.property();
        return switch (plain) {
            case LENGTH -> size(schema.name(), given)
                    .map(m -> new Setting(
                            schema.name(),
                            property.name().span(),
                            placeToChange(given, m.how()),
                            Measure.datum(m.value()),
                            m.how()));
            case SIZE, SIZE_2, SIZE_3 -> sizes(given, plain == Shape.Plain.SIZE_3 ? 3 : 2)
                    .map(all -> setting(
                            property,
                            at,
                            new Datum.Sizes(all.stream().map(m -> Measure.datum(m.value())).toList())));
            case PART -> partName(given, plain.phrase())
                    .map(path -> setting(property, at, new Datum.Word(path)));
            case DIRECTION -> word(given, Direction.words())
                    .map(w -> setting(property, at, new Datum.Word(w)));
            case BOARD, SPECIES, STUFF, SAW, ROOM -> anyWord(given, plain.phrase())
                    .map(w -> setting(property, at, new Datum.Word(w.name())));
            case COUNT, ANGLE, MASS -> single(given, plain.phrase())
                    .flatMap(expr -> leavesOpen(expr, given.scope())
                            ? Optional.of(setting(property, at, Auto.VALUE))
                            : ofKind(expr, given, plain).map(derived -> new Setting(
                                    schema.name(), property.name().span(), at, derived.value(), derived.how())));
            case PERCENT, PERCENT_RANGE, TEMPERATURE_RANGE, TEXT, RINGS, POINT_2, POINT_3, LOAD, PAIR,
                    NUMBER, PARTS, FLAWS ->
                single(given, plain.phrase()).map(expr -> {
                    Derived derived = expressions.evaluate(expr, given.scope());
                    return new Setting(schema.name(), property.name().span(), at, derived.value(), derived.how());
                });
        };
    }

    /** The value of a count, an angle or a weight; what is none is said. */
    private Optional<Derived> ofKind(Expr expr, Given given, Shape.Plain plain) {
        boolean count = plain == Shape.Plain.COUNT;
        Dimension wanted = count
                ? Dimension.NUMBER
                : plain == Shape.Plain.MASS ? Dimension.MASS : Dimension.ANGLE;
        Predicate<Datum> fitting = value -> value instanceof Datum.Exactly(var quantity)
                ? quantity.as(wanted).isPresent()
                : count && value instanceof Datum.Bare;
        Derived derived = expressions.reckoned(expr, given.scope(), fitting);
        boolean fits = fitting.test(derived.value());
        if (!fits && !(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND,
                    expr.span(),
                    "`" + given.property().name().text() + "` wants " + plain.phrase())
                    .found("`" + cut(expr.span().text()) + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return fits && (plain != Shape.Plain.ANGLE || leans(derived.value(), expr, given))
                ? Optional.of(derived)
                : Optional.empty();
    }

    /** Whether an angle is one that the side of a joint can lean by. */
    private boolean leans(Datum value, Expr expr, Given given) {
        boolean fits = value instanceof Datum.Exactly(var quantity) && quantity.as(Dimension.ANGLE)
                .filter(degrees -> degrees.signum() > 0 && degrees.doubleValue() < RIGHT_ANGLE)
                .isPresent();
        if (!fits) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE,
                    expr.span(),
                    "`" + given.property().name().text() + "` does not lean")
                    .found("It lies above 0° and below 90°, as `1:8`; found `" + cut(expr.span().text()) + "`.")
                    .build());
        }
        return fits;
    }

    /** What a unit of length means for a file whose project block says {@code word}. */
    static Unit unitOf(String word) {
        return switch (word) {
            case "in" -> Unit.IN;
            case "cm" -> Unit.CM;
            default -> Unit.MM;
        };
    }
}

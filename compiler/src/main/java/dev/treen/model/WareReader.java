package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Reads what is bought besides boards, and what it costs. */
final class WareReader {
    private static final double MOST_MONEY = 1e9;
    private static final double MOST_PACKED = 1e6;
    /** Nothing that is brushed on is heavier than lead paint by far. */
    private static final double HEAVIEST = 5;
    private static final int MOST_PIECES = 100_000;
    private static final Set<Selling.Per> LIQUID = Set.of(Selling.Per.LITRE, Selling.Per.KILOGRAM);

    private final Session session;
    private final Reader reader;

    WareReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
    }

    /** Whether a statement of the file declares hardware; then it is known from here on. */
    boolean declares(Statement.Property statement, Scope scope) {
        if (!statement.name().text().equals("hardware") || statement.body().isEmpty()) {
            return false;
        }
        if (statement.values().size() != 1 || !(statement.values().getFirst().expr() instanceof Expr.Word name)) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY, Reader.valueSpan(statement),
                    "A name is wanted after `hardware`")
                    .found("Write it as `" + Schemas.HARDWARE.example() + "`.")
                    .build());
            return true;
        }
        Properties inside = Properties.read(session, Schemas.HARDWARE, statement.body(), scope, Optional.empty());
        session.declared(new Symbol(name.name(), "hardware", name.span(), statement.span(), statement.doc()));
        Ware ware = hardware(name, inside);
        session.hardware.stream()
                .filter(other -> other.name().equals(ware.name()) || other.isForTheSameAs(ware))
                .findFirst()
                .ifPresentOrElse(before -> twice(ware, before), () -> session.hardware.add(ware));
        return true;
    }

    private void twice(Ware ware, Ware before) {
        String headline = before.name().equals(ware.name())
                ? "There are two pieces of hardware `" + ware.name() + "`"
                : "`" + ware.name() + "` and `" + before.name() + "` are for the same joints and the same sizes";
        session.add(Finding.of(ModelFindings.SAME_NAME, ware.at(), headline)
                .found("Say the sizes of each, as `long 40`, or take one out.")
                .related(before.at(), "the first; this one counts")
                .build());
    }

    private Ware hardware(Expr.Word name, Properties inside) {
        Optional<String> kind = inside.one("kind").flatMap(g -> reader.word(g, Schemas.HARDWARE_KINDS));
        OptionalInt count = inside.one("count").map(this::count).orElse(OptionalInt.empty());
        if (inside.one("kind").isPresent() == inside.one("count").isPresent()) {
            boolean both = inside.one("kind").isPresent();
            session.add(Finding.of(
                    both ? ModelFindings.DOES_NOT_BELONG : ModelFindings.MISSING_PROPERTY,
                    both ? inside.one("count").orElseThrow().property().name().span() : name.span(),
                    both
                            ? "`" + name.name() + "` has both a `kind` and a `count`"
                            : "`" + name.name() + "` has neither a `kind` nor a `count`")
                    .found("With `kind` the joints say how many there are; what no joint takes says its `count`.")
                    .about(name.name())
                    .build());
        }
        return new Ware(name.name(), name.span(), kind, length(inside, "thick"), length(inside, "long"),
                kind.isPresent() ? OptionalInt.empty() : count, selling(inside, false));
    }

    private OptionalInt count(Properties.Given given) {
        OptionalDouble number = number(given, MOST_PIECES);
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            wrong(Reader.valueSpan(given.property()), "`count` wants a whole number", "hardware knob { count 2 }");
            return OptionalInt.empty();
        }
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    private Optional<Length> length(Properties inside, String name) {
        return inside.one(name).flatMap(g -> reader.size(name, g)).map(Measure::value);
    }

    /** The glue or finish that {@code inside} describes. */
    Ware liquid(String name, Span at, Properties inside) {
        Optional<String> kind = inside.one("kind").flatMap(g -> reader.word(g, Schemas.FINISH_KINDS));
        return new Ware(name, at, kind, Optional.empty(), Optional.empty(), OptionalInt.empty(),
                selling(inside, true));
    }

    private Selling selling(Properties inside, boolean liquid) {
        OptionalDouble pack = inside.one("pack").map(g -> number(g, MOST_PACKED)).orElse(OptionalDouble.empty());
        OptionalDouble weighs = inside.one("weighs").map(g -> number(g, HEAVIEST)).orElse(OptionalDouble.empty());
        Optional<Selling.Sum> price = inside.one("price").flatMap(this::sum);
        price.ifPresent(sum -> {
            boolean unfit = !liquid && LIQUID.contains(sum.per());
            boolean bottle = liquid && sum.per() == Selling.Per.EACH && inside.one("pack").isEmpty();
            boolean weight = liquid && sum.per() == Selling.Per.KILOGRAM && inside.one("weighs").isEmpty();
            if (unfit) {
                wrong(sum.at(), "Hardware is sold by the piece or by the packet", "price { each 3.40 }");
            } else if (bottle) {
                lacks(sum.at(), "A price for each bottle or can wants its `pack`",
                        "Write how much it holds in millilitres, as `pack 500`.");
            } else if (weight) {
                lacks(sum.at(), "A price by weight wants `weighs`",
                        "Write what a litre weighs in kilograms, as the can says, such as `weighs 1.1`.");
            }
        });
        Optional<Selling.Sum> fits = price.filter(sum -> liquid
                ? sum.per() != Selling.Per.EACH || pack.isPresent()
                : !LIQUID.contains(sum.per()));
        return new Selling(fits, pack, weighs);
    }

    private Optional<Selling.Sum> sum(Properties.Given given) {
        Properties inside = Properties.read(
                session, Schemas.WARE_PRICE, given.property().body(), given.scope(), Optional.empty());
        Span at = given.property().name().span();
        List<Selling.Sum> sums = new ArrayList<>();
        boolean said = false;
        for (Selling.Per per : Selling.Per.values()) {
            Optional<Properties.Given> one = inside.one(per.word());
            said |= one.isPresent();
            one.map(g -> number(g, MOST_MONEY))
                    .filter(OptionalDouble::isPresent)
                    .ifPresent(n -> sums.add(new Selling.Sum(n.getAsDouble(), per, at)));
        }
        if (!said || sums.size() > 1) {
            session.add(UnsaidPrice.finding(given.property(), said, Schemas.WARE_PRICE.example(),
                    Arrays.stream(Selling.Per.values())
                            .map(per -> new UnsaidPrice.Way(per.word(), per.phrase()))
                            .toList()));
            return Optional.empty();
        }
        return sums.stream().findFirst();
    }

    private OptionalDouble number(Properties.Given given, double most) {
        return reader.single(given, Shape.Plain.NUMBER.phrase())
                .map(expr -> reader.number(given, expr, most))
                .orElse(OptionalDouble.empty());
    }

    private void wrong(Span at, String headline, String example) {
        session.add(Finding.of(ModelFindings.WRONG_KIND, at, headline).found("Write one, as `" + example + "`.")
                .build());
    }

    private void lacks(Span at, String headline, String found) {
        session.add(Finding.of(ModelFindings.MISSING_PROPERTY, at, headline).found(found).build());
    }
}

package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.quantity.Dimension;
import dev.treen.quantity.Quantity;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Name;
import dev.treen.syntax.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The parameters of an instance: what its block gives, or the pattern's default, read as the parameter's kind. */
final class Parameters {
    private final Session session;
    private final Expressions expressions;
    private final Reader reader;

    Parameters(Session session, Expressions expressions, Reader reader) {
        this.session = session;
        this.expressions = expressions;
        this.reader = reader;
    }

    /** Enters all parameters of {@code instance} into its inside. */
    void enter(InstanceEntry instance) {
        Scope inside = instance.declaring();
        for (Statement.Param param : instance.pattern().params()) {
            String name = param.name().text();
            if (name.isEmpty() || inside.own(name).isPresent()) {
                continue;
            }
            Optional<Properties.Given> given = instance.given().one(name);
            Cell cell = cell(instance, param, name, given);
            List<String> choices = param.type().choices().stream().map(Name::text).toList();
            Scope.Parameter entry = new Scope.Parameter(
                    param.name().span(), cell, choices, options(instance, param, given));
            if (choices.isEmpty()) {
                inside.entries().put(name, entry);
            } else {
                inside.choices().put(name, entry);
            }
            given.ifPresent(g -> session.used(new Usage(
                    g.property().name().span(), param.name().span(), Expressions.thing(
                            name, Datum.Thing.Kind.PARAMETER, param.name().span()))));
            if (given.isEmpty() && param.standard().isEmpty()) {
                missing(instance, param);
            }
        }
    }

    private Cell cell(InstanceEntry instance, Statement.Param param, String label, Optional<Properties.Given> given) {
        Span at = given.map(g -> Reader.valueSpan(g.property())).orElse(instance.nameAt());
        Scope inside = instance.declaring();
        return new Cell(session, inside, label, at, () -> given
                .map(g -> session.within(instance.use().instance(), () -> fromUse(param, g)))
                .orElseGet(() -> param.standard()
                        .map(standard -> typed(param, standard, inside))
                        .orElseGet(() -> Expressions.unknown(at))));
    }

    private Map<String, Cell> options(
            InstanceEntry instance, Statement.Param param, Optional<Properties.Given> given) {
        Map<String, Cell> options = new LinkedHashMap<>();
        List<Statement> inner = param.body().map(Block::statements).orElse(List.of());
        PropertySchema schema = instance.pattern().schema().property(param.name().text()).orElse(null);
        if (schema == null || !(schema.shape() instanceof Shape.Choice(var words, BlockSchema block))) {
            return options;
        }
        Properties inBlock = given.flatMap(g -> g.property().body().map(body -> session.within(
                instance.use().instance(),
                () -> Properties.read(session, block, Optional.of(body), g.scope(), Optional.empty()))))
                .orElse(Properties.NONE);
        for (Statement.Param option : PatternEntry.paramsOf(inner)) {
            String name = option.name().text();
            Optional<Properties.Given> value = inBlock.one(name);
            options.putIfAbsent(name, cell(instance, option, param.name().text() + "." + name, value));
            value.ifPresent(v -> session.used(new Usage(
                    v.property().name().span(), option.name().span(), Expressions.thing(
                            name, Datum.Thing.Kind.PARAMETER, option.name().span()))));
            if (value.isEmpty() && option.standard().isEmpty()) {
                missing(instance, option);
            }
        }
        return options;
    }

    private void missing(InstanceEntry instance, Statement.Param param) {
        Finding finding = Finding.of(
                ModelFindings.MISSING_PROPERTY,
                instance.nameAt(),
                "`" + instance.path() + "` does not say its `" + param.name().text() + "`")
                .found("The pattern `" + instance.pattern().name() + "` needs it"
                        + (param.doc().isEmpty() ? "." : ": " + param.doc()))
                .related(param.span(), "declared here")
                .about(instance.path())
                .build();
        session.within(instance.use().instance(), () -> session.add(finding));
    }

    private Derived fromUse(Statement.Param param, Properties.Given given) {
        Optional<Expr> expr = reader.single(given, kind(param));
        return expr.map(e -> typed(param, e, given.scope()))
                .orElseGet(() -> Expressions.unknown(Reader.valueSpan(given.property())));
    }

    private static String kind(Statement.Param param) {
        Shape shape = PatternSchemas.TYPES.get(param.type().name());
        return shape != null
                ? shape.phrase()
                : new Shape.OneOf(param.type().choices().stream().map(Name::text).toList()).phrase();
    }

    private Derived typed(Statement.Param param, Expr expr, Scope scope) {
        List<String> choices = param.type().choices().stream().map(Name::text).toList();
        if (!choices.isEmpty()) {
            return choice(param, choices, expr, scope);
        }
        Optional<String> open = param.standard().flatMap(Parameters::openWord);
        if (open.isPresent() && openWord(expr).equals(open)) {
            Datum word = new Datum.Word(open.get());
            return new Derived(word, Derivation.written("", word, expr.span()));
        }
        Derived derived = param.type().name().equals("board")
                ? expressions.wood(expr, scope)
                : expressions.evaluate(expr, scope);
        if (derived.value() instanceof Datum.Unknown) {
            return derived;
        }
        boolean handedOn = derived.value() instanceof Datum.Word(String word) && open.filter(word::equals).isPresent();
        if (handedOn || fits(param.type().name(), derived.value())) {
            return settled(param, expr, derived);
        }
        wrong(param, expr, kind(param), Arithmetic.phrase(derived.value()));
        return Expressions.unknown(expr.span());
    }

    /** {@code auto} or {@code any}: what a default leaves open, the value may leave open too. */
    private static Optional<String> openWord(Expr expr) {
        return expr instanceof Expr.Word word && (word.name().equals(Auto.WORD) || word.name().equals("any"))
                ? Optional.of(word.name())
                : Optional.empty();
    }

    private static boolean fits(String type, Datum value) {
        return switch (type) {
            case "length" -> Arithmetic.length(value).isPresent();
            case "count" -> Arithmetic.number(value)
                    .filter(n -> Quantity.number(n).asWhole().isPresent() && n.signum() >= 0)
                    .isPresent();
            case "size" -> value instanceof Datum.Sizes(List<Datum> measures)
                    && measures.stream().allMatch(m -> Arithmetic.length(m).isPresent());
            case "angle" -> value instanceof Datum.Exactly(Quantity quantity)
                    && quantity.dimension() == Dimension.ANGLE;
            case "text" -> value instanceof Datum.Text;
            case "part" -> value instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                    && kind == Datum.Thing.Kind.PART;
            case "board" -> value instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                    && (kind == Datum.Thing.Kind.BOARD || kind == Datum.Thing.Kind.SPECIES);
            default -> true;
        };
    }

    /** A bare number becomes what the parameter is, in the units of the file where it stands. */
    private Derived settled(Statement.Param param, Expr expr, Derived derived) {
        if (!(derived.value() instanceof Datum.Bare bare)) {
            return derived;
        }
        if (param.type().name().equals("count")) {
            return new Derived(new Datum.Exactly(Quantity.number(bare.amount())), derived.how());
        }
        Datum length = new Datum.Exactly(bare.unit().of(bare.amount()));
        Arithmetic.length(length).ifPresent(
                l -> session.bare(new Measure(l, expr.span(), derived.how())));
        Derivation how = derived.how();
        return new Derived(length, new Derivation(how.label(), length, how.formula(), how.at()));
    }

    private Derived choice(Statement.Param param, List<String> choices, Expr expr, Scope scope) {
        Datum value = expr instanceof Expr.Word word && choices.contains(word.name())
                ? new Datum.Word(word.name())
                : forwarded(expr, scope);
        if (value instanceof Datum.Word(String word) && choices.contains(word)) {
            return new Derived(value, Derivation.written("", value, expr.span()));
        }
        if (!(value instanceof Datum.Unknown)) {
            String found = "`" + Reader.cut(expr.span().text()) + "`";
            wrong(param, expr, new Shape.OneOf(choices).phrase(), found);
        }
        return Expressions.unknown(expr.span());
    }

    /** The choice of another parameter, handed on; a strange word stays a word, so that the choices can be offered. */
    private Datum forwarded(Expr expr, Scope scope) {
        if (expr instanceof Expr.Word word && scope.find(word.name()).isEmpty()) {
            return new Datum.Word(word.name());
        }
        return expressions.evaluate(expr, scope).value();
    }

    private void wrong(Statement.Param param, Expr expr, String wanted, String found) {
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND, expr.span(), "`" + param.name().text() + "` wants " + wanted)
                .found("Found " + found + "." + (param.doc().isEmpty() ? "" : " " + param.doc()))
                .related(param.span(), "declared here");
        List<String> choices = param.type().choices().stream().map(Name::text).toList();
        NearWords.remedies(expr.span().text(), expr.span(), choices).forEach(finding::remedy);
        session.add(finding.build());
    }
}

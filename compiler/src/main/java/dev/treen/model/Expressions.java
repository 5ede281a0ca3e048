package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.quantity.Outcome;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Name;
import dev.treen.syntax.Operator;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** Works out expressions. A fault is reported once, where it is; its value is unknown from there on. */
final class Expressions {
    private final Session session;
    private final Arithmetic arithmetic;
    private final FactSource facts;

    Expressions(Session session) {
        this(session, FactSource.NONE);
    }

    Expressions(Session session, FactSource facts) {
        this.session = session;
        this.facts = facts;
        this.arithmetic = new Arithmetic(session);
    }

    static Derived unknown(Span at) {
        return new Derived(Datum.UNKNOWN, Derivation.written("", Datum.UNKNOWN, at));
    }

    private static Derived written(Datum value, Span at) {
        return new Derived(value, Derivation.written("", value, at));
    }

    Derived evaluate(Expr expr, Scope scope) {
        return switch (expr) {
            case Expr.Figure figure -> figure(figure, scope);
            case Expr.SlopeFigure slope -> slope(slope);
            case Expr.Text text -> written(new Datum.Text(text.value()), text.span());
            case Expr.Truth truth -> written(new Datum.Truth(truth.value()), truth.span());
            case Expr.Word word -> word(word, scope, scope::names);
            case Expr.Member member -> member(member, scope);
            case Expr.Element element -> element(element, scope);
            case Expr.Prefix prefix -> prefix(prefix, scope);
            case Expr.Infix infix -> chosen(infix, scope)
                    .orElseGet(() -> arithmetic.infix(
                            infix, reckoned(infix.left(), scope), reckoned(infix.right(), scope)));
            case Expr.Sizes sizes -> sizes(sizes, scope);
            case Expr.Between between -> between(between, scope);
            case Expr.Choice choice -> choice(choice, scope);
            case Expr.Call call -> call(call, scope);
            case Expr.Missing missing -> unknown(missing.span());
        };
    }

    private static Derived figure(Expr.Figure figure, Scope scope) {
        Datum value = figure.unit()
                .<Datum>map(unit -> new Datum.Exactly(unit.of(figure.amount())))
                .orElseGet(() -> new Datum.Bare(figure.amount(), scope.units()));
        return written(value, figure.span());
    }

    private Derived slope(Expr.SlopeFigure slope) {
        return switch (dev.treen.quantity.Slope.of(slope.rise(), slope.run())) {
            case Outcome.Got<dev.treen.quantity.Slope>(var found) ->
                written(new Datum.Exactly(Quantity.of(found.toAngle())), slope.span());
            case Outcome.Refused<dev.treen.quantity.Slope>(var why) -> {
                session.add(Finding.of(ModelFindings.OUT_OF_RANGE, slope.span(), "The slope is not possible")
                        .found(why.text())
                        .build());
                yield unknown(slope.span());
            }
        };
    }

    /** The same where only something that is reckoned with will do: no part or board is offered for a wrong name. */
    Derived reckoned(Expr expr, Scope scope) {
        return reckoned(expr, scope, _ -> true);
    }

    /** The same where it has to be {@code wanted}: for a wrong name none is offered that is known to be another kind. */
    Derived reckoned(Expr expr, Scope scope, Predicate<Datum> wanted) {
        // Before all values are known it would depend on the order of the text what is offered.
        return expr instanceof Expr.Word word
                ? word(word, scope, () -> scope.figures(cell -> !session.knowsAll()
                        || cell.ifKnown().map(Derived::value).filter(value -> !isFit(value, wanted)).isEmpty()))
                : evaluate(expr, scope);
    }

    private static boolean isFit(Datum value, Predicate<Datum> wanted) {
        return value instanceof Datum.Unknown || wanted.test(value);
    }

    /** A board or sheet by its name or, where nothing has that name, any of a species that is on the rack. */
    Derived wood(Expr expr, Scope scope) {
        if (!(expr instanceof Expr.Word word) || scope.find(word.name()).isPresent()) {
            return evaluate(expr, scope);
        }
        if (session.species().contains(word.name())) {
            return thing(word.name(), Datum.Thing.Kind.SPECIES, word.span());
        }
        Set<String> known = new LinkedHashSet<>(scope.names());
        known.addAll(session.species());
        unknownName(word.span(), word.name(), "No board, sheet or species on the rack is called `" + word.name() + "`",
                known);
        return unknown(word.span());
    }

    private Derived word(Expr.Word word, Scope scope, Supplier<Set<String>> fitting) {
        Optional<Scope.Entry> found = scope.find(word.name());
        if (found.isEmpty()) {
            if (Unit.spelled(word.name()).isPresent()) {
                loneUnit(word);
            } else {
                unknownName(word.span(), word.name(), fitting.get());
            }
            return unknown(word.span());
        }
        return use(word.span(), found.get());
    }

    /** Half of a figure is no misspelt name, however near one is. */
    private void loneUnit(Expr.Word word) {
        session.add(Finding.of(
                ModelFindings.UNKNOWN_NAME, word.span(), "Nothing is called `" + word.name() + "`")
                .about(word.name())
                .found("It is a unit: a figure goes before it, as in `20" + word.name() + "`.")
                .build());
    }

    private Derived use(Span at, Scope.Entry entry) {
        Derived value = switch (entry) {
            case Scope.Constant constant -> constant.cell().value();
            case Scope.Parameter parameter -> parameter.cell().value();
            case PartEntry part -> thing(part.path(), Datum.Thing.Kind.PART, part.nameAt());
            case BoardEntry board -> thing(board.path(), Datum.Thing.Kind.BOARD, board.nameAt());
            case InstanceEntry instance -> thing(instance.path(), Datum.Thing.Kind.INSTANCE, instance.nameAt());
            case Scope.Array array -> thing(array.path(), Datum.Thing.Kind.ARRAY, array.nameAt());
            case Scope.Other file -> thing(at.text(), Datum.Thing.Kind.FILE, file.nameAt());
            case PatternEntry pattern -> thing(pattern.name(), Datum.Thing.Kind.PATTERN, pattern.nameAt());
            case Scope.Preset preset -> thing(at.text(), Datum.Thing.Kind.PRESET, preset.nameAt());
        };
        session.used(new Usage(at, entry.nameAt(), value));
        return value;
    }

    static Derived thing(String path, Datum.Thing.Kind kind, Span at) {
        return written(new Datum.Thing(path, kind), at);
    }

    /** The thing that a path names: {@code caddy}, {@code rack.plank}, {@code tier[2].front}; empty for what is reckoned. */
    Optional<Scope.Entry> entry(Expr expr, Scope scope) {
        return switch (expr) {
            case Expr.Word word -> scope.find(word.name());
            case Expr.Member member -> entry(member.of(), scope)
                    .flatMap(Expressions::insideOf)
                    .flatMap(inside -> inside.own(member.name().text()));
            case Expr.Element element -> entry(element.of(), scope)
                    .flatMap(of -> of instanceof Scope.Array array
                            ? arithmetic.whole(evaluate(element.index(), scope).value())
                                    .map(number -> array.elements().get(number))
                            : Optional.empty());
            default -> Optional.empty();
        };
    }

    private static Optional<Scope> insideOf(Scope.Entry entry) {
        return switch (entry) {
            case InstanceEntry instance -> Optional.of(instance.inside());
            case Scope.Other file -> Optional.of(file.scope());
            default -> Optional.empty();
        };
    }

    // ---- choices: `base == floating`

    /** A comparison of a choice with one of its words. */
    private Optional<Derived> chosen(Expr.Infix infix, Scope scope) {
        if (infix.operator() != Operator.EQUAL && infix.operator() != Operator.UNEQUAL) {
            return Optional.empty();
        }
        return choice(infix.left(), scope).map(parameter -> {
            session.used(new Usage(
                    infix.left().span(), parameter.nameAt(), parameter.cell().value()));
            Datum left = parameter.cell().value().value();
            Optional<Datum> right = choiceWord(infix.right(), parameter, scope);
            if (left instanceof Datum.Unknown || right.isEmpty()) {
                return unknown(infix.span());
            }
            Datum.Truth truth = new Datum.Truth(
                    left.equals(right.get()) == (infix.operator() == Operator.EQUAL));
            return written(truth, infix.span());
        });
    }

    private Optional<Scope.Parameter> choice(Expr expr, Scope scope) {
        return switch (expr) {
            case Expr.Word word -> scope.choice(word.name());
            case Expr.Member member -> entry(member.of(), scope)
                    .flatMap(Expressions::insideOf)
                    .flatMap(inside -> Optional.ofNullable(inside.choices().get(member.name().text())));
            default -> Optional.empty();
        };
    }

    private Optional<Datum> choiceWord(Expr expr, Scope.Parameter parameter, Scope scope) {
        if (expr instanceof Expr.Word word && parameter.choices().contains(word.name())) {
            return Optional.of(new Datum.Word(word.name()));
        }
        Optional<Scope.Parameter> other = choice(expr, scope);
        if (other.isPresent()) {
            Datum value = other.get().cell().value().value();
            return value instanceof Datum.Unknown ? Optional.empty() : Optional.of(value);
        }
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND,
                expr.span(),
                "`" + Reader.cut(expr.span().text()) + "` is none of the choices")
                .found("There are " + NearWords.quoted(parameter.choices()) + ".")
                .related(parameter.nameAt(), "declared here");
        NearWords.remedies(expr.span().text(), expr.span(), parameter.choices()).forEach(finding::remedy);
        session.add(finding.build());
        return Optional.empty();
    }

    void unknownName(Span at, String name, Collection<String> known) {
        unknownName(at, name, "Nothing is called `" + name + "`", known);
    }

    private void unknownName(Span at, String name, String headline, Collection<String> known) {
        List<String> near = NearWords.of(name, known);
        Finding.Builder finding = Finding.of(ModelFindings.UNKNOWN_NAME, at, headline).about(name);
        if (!near.isEmpty()) {
            finding.found("A similar name exists: " + NearWords.quoted(near) + ".");
            NearWords.remedies(name, at, known).forEach(finding::remedy);
        }
        session.add(finding.build());
    }

    private Derived member(Expr.Member member, Scope scope) {
        Optional<Derived> option = ofPart(member, scope).or(() -> option(member, scope));
        if (option.isPresent()) {
            return option.get();
        }
        Optional<Scope.Entry> owner = entry(member.of(), scope);
        Optional<Scope> inside = owner.flatMap(Expressions::insideOf);
        if (inside.isPresent()) {
            evaluate(member.of(), scope);
            return inside.get()
                    .own(member.name().text())
                    .map(entry -> use(member.name().span(), entry))
                    .orElseGet(() -> unknownInside(member, inside.get()));
        }
        Derived of = evaluate(member.of(), scope);
        Name name = member.name();
        Optional<Derived> found = switch (of.value()) {
            case Datum.Thing(String path, Datum.Thing.Kind kind) -> memberOf(path, kind, name.text());
            case Datum.Sizes(List<Datum> measures) -> measureOf(of, measures, name.text());
            case Datum.Between(Datum low, Datum high) -> endOf(of, low, high, name.text());
            case Datum.Unknown unknown -> Optional.of(unknown(member.span()));
            case Datum.Exactly e -> Optional.empty();
            case Datum.Bare b -> Optional.empty();
            case Datum.Several s -> Optional.empty();
            case Datum.Text t -> Optional.empty();
            case Datum.Truth t -> Optional.empty();
            // A measure of a size that is left to Treen is left to Treen too.
            case Datum.Word(String word) ->
                word.equals(Auto.WORD) && dev.treen.quantity.Size.NAMES.contains(name.text())
                        ? Optional.of(of)
                        : Optional.empty();
        };
        if (found.isEmpty()) {
            if (!name.text().isEmpty()) {
                unknownMember(member, of.value());
            }
            return unknown(member.span());
        }
        session.used(new Usage(name.span(), found.get().how().at().orElse(name.span()), found.get()));
        return found.get();
    }

    /** {@code caddy.base.gap}, seen from outside: of a part that has the name of a choice, the part comes first. */
    private Optional<Derived> ofPart(Expr.Member member, Scope scope) {
        if (!(member.of() instanceof Expr.Member) || choice(member.of(), scope).isEmpty()
                || !(entry(member.of(), scope).orElse(null) instanceof PartEntry part)) {
            return Optional.empty();
        }
        evaluate(((Expr.Member) member.of()).of(), scope);
        return memberOf(part.path(), Datum.Thing.Kind.PART, member.name().text()).map(value -> {
            use(member.of().span(), part);
            session.used(new Usage(member.name().span(), value.how().at().orElse(member.name().span()), value));
            return value;
        });
    }

    /** {@code base.thick}: what goes with a choice, even where a part has the name of the choice. */
    private Optional<Derived> option(Expr.Member member, Scope scope) {
        return choice(member.of(), scope).flatMap(parameter -> Optional
                .ofNullable(parameter.options().get(member.name().text()))
                .map(cell -> {
                    Derived value = cell.value();
                    session.used(new Usage(member.of().span(), parameter.nameAt(), value));
                    session.used(new Usage(member.name().span(), cell.at(), value));
                    return value;
                }));
    }

    private Derived unknownInside(Expr.Member member, Scope inside) {
        if (!member.name().text().isEmpty()) {
            unknownName(
                    member.name().span(),
                    member.name().text(),
                    "`" + member.of().span().text() + "` has nothing called `" + member.name().text() + "`",
                    inside.ownNames());
        }
        return unknown(member.span());
    }

    private void unknownMember(Expr.Member member, Datum of) {
        String what = member.of().span().text();
        boolean sized = of instanceof Datum.Thing || of instanceof Datum.Sizes;
        List<String> known = new ArrayList<>(sized ? dev.treen.quantity.Size.NAMES : List.of());
        if (of instanceof Datum.Thing(String path, Datum.Thing.Kind kind)) {
            known.addAll(facts.names(path));
        }
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_NAME,
                member.name().span(),
                "`" + what + "` has nothing called `" + member.name().text() + "`")
                .found(known.isEmpty() ? "" : "It has " + NearWords.quoted(known) + ".");
        NearWords.remedies(member.name().text(), member.name().span(), known).forEach(finding::remedy);
        session.add(finding.build());
    }

    private Optional<Derived> memberOf(String path, Datum.Thing.Kind kind, String name) {
        int which = dev.treen.quantity.Size.NAMES.indexOf(name);
        return switch (kind) {
            case PART -> Optional.ofNullable(session.parts.get(path))
                    .filter(part -> which >= 0)
                    .map(part -> part.measure(which))
                    .or(() -> facts.fact(path, name));
            case BOARD -> Optional.ofNullable(session.boards.get(path))
                    .filter(board -> which >= 0)
                    .map(board -> board.measure(which));
            case SPECIES, INSTANCE, ARRAY, FILE, PATTERN, PARAMETER, PRESET -> Optional.empty();
        };
    }

    private static Optional<Derived> measureOf(Derived of, List<Datum> measures, String name) {
        int which = dev.treen.quantity.Size.NAMES.indexOf(name);
        if (which < 0 || which >= measures.size()) {
            return Optional.empty();
        }
        String label = of.how().label() + "." + name;
        Derivation how = of.how().formula() instanceof Derivation.Listed(List<Derivation> each)
                ? each.get(which).named(label)
                : new Derivation(label, measures.get(which), new Derivation.Same(of.how()), of.how().at());
        return Optional.of(new Derived(measures.get(which), how));
    }

    private static Optional<Derived> endOf(Derived of, Datum low, Datum high, String name) {
        return switch (name) {
            case "low" -> Optional.of(new Derived(low, of.how().named(of.how().label() + ".low")));
            case "high" -> Optional.of(new Derived(high, of.how().named(of.how().label() + ".high")));
            default -> Optional.empty();
        };
    }

    private Derived element(Expr.Element element, Scope scope) {
        Derived of = evaluate(element.of(), scope);
        if (!(entry(element.of(), scope).orElse(null) instanceof Scope.Array array)) {
            if (!(of.value() instanceof Datum.Unknown)) {
                session.add(Finding.of(
                        ModelFindings.WRONG_KIND,
                        element.of().span(),
                        "`" + element.of().span().text() + "` is one thing, not a row of numbered ones")
                        .build());
            }
            return unknown(element.span());
        }
        Derived index = evaluate(element.index(), scope);
        Optional<Integer> number = arithmetic.whole(index.value());
        if (number.isEmpty()) {
            if (!(index.value() instanceof Datum.Unknown)) {
                session.add(Finding.of(
                        ModelFindings.WRONG_KIND, element.index().span(), "A whole number is wanted in brackets")
                        .build());
            }
            return unknown(element.span());
        }
        Scope.Entry found = array.elements().get(number.get());
        if (found == null) {
            session.add(Finding.of(
                    ModelFindings.UNKNOWN_NAME,
                    element.index().span(),
                    "There is no `" + element.of().span().text() + "[" + number.get() + "]`")
                    .found("There are " + array.elements().keySet().stream().min(Integer::compare).orElse(0) + " to "
                            + array.elements().keySet().stream().max(Integer::compare).orElse(0) + ".")
                    .build());
            return unknown(element.span());
        }
        return use(element.span(), found);
    }

    private Derived prefix(Expr.Prefix prefix, Scope scope) {
        // A minus belongs to a figure of temperature, which knows no sums: -5degF is not minus (5degF).
        if (prefix.operator() == Operator.MINUS && prefix.operand() instanceof Expr.Figure figure) {
            return figure(new Expr.Figure(prefix.span(), figure.amount().negate(), figure.unit()), scope);
        }
        return arithmetic.prefix(prefix, reckoned(prefix.operand(), scope));
    }

    private Derived sizes(Expr.Sizes sizes, Scope scope) {
        List<Derived> measures = new ArrayList<>();
        for (Expr each : sizes.measures()) {
            measures.add(reckoned(each, scope));
        }
        if (measures.stream().anyMatch(m -> m.value() instanceof Datum.Unknown)) {
            return unknown(sizes.span());
        }
        Datum value = new Datum.Sizes(measures.stream().map(Derived::value).toList());
        Derivation.Listed each = new Derivation.Listed(measures.stream().map(Derived::how).toList());
        return new Derived(value, new Derivation("", value, each, Optional.of(sizes.span())));
    }

    private Derived between(Expr.Between between, Scope scope) {
        Datum low = reckoned(between.low(), scope).value();
        Datum high = reckoned(between.high(), scope).value();
        boolean known = !(low instanceof Datum.Unknown) && !(high instanceof Datum.Unknown);
        return written(known ? new Datum.Between(low, high) : Datum.UNKNOWN, between.span());
    }

    private Derived choice(Expr.Choice choice, Scope scope) {
        Derived condition = evaluate(choice.condition(), scope);
        return switch (condition.value()) {
            case Datum.Truth(boolean holds) -> {
                named(holds ? choice.no() : choice.yes(), scope);
                yield evaluate(holds ? choice.yes() : choice.no(), scope);
            }
            case Datum.Unknown unknown -> unknown(choice.span());
            default -> {
                session.add(Finding.of(
                        ModelFindings.WRONG_KIND, choice.condition().span(), "A condition is wanted here")
                        .found("`" + choice.condition().span().text() + "` is " + Arithmetic.phrase(condition.value())
                                + ".")
                        .build());
                yield unknown(choice.span());
            }
        };
    }

    /**
     * Notes the names that the way not taken says, without working anything out: what is renamed is renamed there too, and
     * nothing of it can be wrong or go in circles until it is taken.
     */
    private void named(Expr expr, Scope scope) {
        switch (expr) {
            case Expr.Word word -> scope.find(word.name()).ifPresent(entry -> named(word.span(), entry));
            case Expr.Member member -> {
                named(member.of(), scope);
                entry(member.of(), scope).flatMap(Expressions::insideOf)
                        .flatMap(inside -> inside.own(member.name().text()))
                        .ifPresent(entry -> named(member.name().span(), entry));
            }
            case Expr.Element element -> {
                named(element.of(), scope);
                named(element.index(), scope);
            }
            case Expr.Prefix prefix -> named(prefix.operand(), scope);
            case Expr.Infix infix -> {
                named(infix.left(), scope);
                named(infix.right(), scope);
            }
            case Expr.Sizes sizes -> sizes.measures().forEach(each -> named(each, scope));
            case Expr.Between between -> {
                named(between.low(), scope);
                named(between.high(), scope);
            }
            case Expr.Choice inner -> {
                named(inner.condition(), scope);
                named(inner.yes(), scope);
                named(inner.no(), scope);
            }
            case Expr.Call call -> call.arguments().forEach(each -> named(each, scope));
            case Expr.Figure figure -> {
            }
            case Expr.SlopeFigure slope -> {
            }
            case Expr.Text text -> {
            }
            case Expr.Truth truth -> {
            }
            case Expr.Missing missing -> {
            }
        }
    }

    private void named(Span at, Scope.Entry entry) {
        session.used(new Usage(at, entry.nameAt(), unknown(at)));
    }

    private Derived call(Expr.Call call, Scope scope) {
        List<Derived> arguments = new ArrayList<>();
        call.arguments().forEach(each -> arguments.add(reckoned(each, scope)));
        if (!Arithmetic.FUNCTIONS.contains(call.function().text())) {
            unknownName(call.function().span(), call.function().text(), Arithmetic.FUNCTIONS);
            return unknown(call.span());
        }
        return arithmetic.call(call, arguments);
    }

    Arithmetic arithmetic() {
        return arithmetic;
    }
}

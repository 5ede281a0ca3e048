package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Name;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes the joints of a project from their statements. */
final class Joints {
    private static final Pattern WORD_BETWEEN = Pattern.compile("\\b(?:into|to)\\b");

    private final EarlierValues earlier;
    private final Session session;
    private final Expressions expressions;
    private final Reader reader;
    private final Instances instances;
    private final Map<String, JointSchema> schemas;
    private final Map<String, Part> parts;
    private final Map<InstanceEntry, Set<String>> names = new LinkedHashMap<>();
    private final List<Joint> made = new ArrayList<>();
    private int number;

    Joints(
            Session session,
            Expressions expressions,
            Reader reader,
            Instances instances,
            Map<String, JointSchema> schemas,
            Map<String, Part> parts,
            EarlierValues earlier) {
        this.earlier = earlier;
        this.session = session;
        this.expressions = expressions;
        this.reader = reader;
        this.instances = instances;
        this.schemas = schemas;
        this.parts = parts;
    }

    List<Joint> made() {
        return made;
    }

    /** The names that joints inside {@code instance} have. */
    Set<String> namesIn(InstanceEntry instance) {
        return names.getOrDefault(instance, Set.of());
    }

    void make(Sequence.ToJoin pending) {
        Optional<EarlierValues.Unit> unit = earlier.of(pending.statement());
        List<Joint> known = unit.filter(each -> each.stays).map(each -> each.joints).orElse(null);
        if (known != null) {
            int mine = number++;
            known.forEach(joint -> made.add(joint.numbered(mine)));
            return;
        }
        int first = made.size();
        session.noting(unit.map(each -> each.notes).orElse(session.notes()), () -> {
            session.within(pending.scope().instance(), () -> make(pending.statement(), pending.scope()));
            return true;
        });
        unit.ifPresent(each -> each.joints = List.copyOf(made.subList(first, made.size())));
    }

    /** One joint statement with its kind's schema and all that is set of it. */
    private record Making(
            Statement.Joint statement, Scope scope, JointSchema schema, Map<String, Setting> settings, int number) {}

    private void make(Statement.Joint statement, Scope scope) {
        int mine = number++;
        statement.alias().ifPresent(alias -> scope.instance()
                .ifPresent(i -> names.computeIfAbsent(i, k -> new LinkedHashSet<>()).add(alias.text())));
        if (statement.pairs().isEmpty()) {
            withoutParts(statement);
            return;
        }
        Optional<JointSchema> schema = kind(statement, scope);
        if (schema.isEmpty()) {
            return;
        }
        Making making = new Making(statement, scope, schema.get(), settings(statement, scope, schema.get()), mine);
        for (Statement.Pair pair : statement.pairs()) {
            if (pair.into() != schema.get().into()) {
                session.add(joinedWrongly(schema.get(), pair));
                continue;
            }
            for (Part left : partsOf(pair.left(), scope)) {
                for (Part right : partsOf(pair.right(), scope)) {
                    join(making, pair, left, right);
                }
            }
        }
    }

    private static Finding joinedWrongly(JointSchema schema, Statement.Pair pair) {
        String wanted = schema.into() ? "into" : "to";
        Finding.Builder finding = Finding.of(
                ModelFindings.JOINED_WRONGLY,
                pair.span(),
                "A " + schema.kind() + " is written `a " + wanted + " b`")
                .found(schema.into()
                        ? "The part before the word is let into the one behind it."
                        : "Neither part is let into the other, so the word is `to`.");
        // Where a pair takes its first part over from the one before, the word stands there.
        SourceFile source = pair.span().source();
        int behind = pair.left().span().to();
        Matcher word = WORD_BETWEEN.matcher(source.text()).region(behind, Math.max(behind, pair.right().span().from()));
        if (pair.span().from() <= pair.left().span().from() && word.find()) {
            finding.remedy(Remedy.choice(
                    "write `" + wanted + "`", new Edit(new Span(source, word.start(), word.end()), wanted)));
        }
        return finding.build();
    }

    private void withoutParts(Statement.Joint statement) {
        if (statement.kind().text().isEmpty()) {
            return;
        }
        JointSchema schema = schemas.get(statement.kind().text());
        if (schema == null) {
            unknown(statement);
            return;
        }
        session.add(Finding.of(
                ModelFindings.JOINED_WRONGLY,
                statement.kind().span(),
                "This " + schema.kind() + " does not say which parts it joins")
                .found("Write it as `" + schema.block().example() + "`.")
                .build());
    }

    /** The kind as written, or the one that a parameter of the pattern chooses. */
    private Optional<JointSchema> kind(Statement.Joint statement, Scope scope) {
        String word = statement.kind().text();
        JointSchema written = schemas.get(word);
        if (written != null) {
            return Optional.of(written);
        }
        Optional<Scope.Parameter> choice = scope.choice(word);
        if (choice.isPresent()) {
            Datum value = choice.get().cell().value().value();
            return value instanceof Datum.Word(String chosen) && schemas.containsKey(chosen)
                    ? Optional.ofNullable(schemas.get(chosen))
                    : Optional.empty();
        }
        unknown(statement);
        return Optional.empty();
    }

    private void unknown(Statement.Joint statement) {
        String kind = statement.kind().text();
        if (kind.isEmpty()) {
            return;
        }
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_JOINT, statement.kind().span(), "There is no joint called `" + kind + "`")
                .found("There are " + NearWords.quoted(List.copyOf(schemas.keySet())) + ".");
        NearWords.remedies(kind, statement.kind().span(), schemas.keySet()).forEach(finding::remedy);
        session.add(finding.build());
    }

    private Map<String, Setting> settings(Statement.Joint statement, Scope scope, JointSchema schema) {
        Properties written = Properties.read(
                session, schema.block(), ofKind(statement, scope, schema), scope, Optional.empty());
        Properties said = scope.instance()
                .flatMap(instance -> statement.alias()
                        .flatMap(alias -> instance.overrules().joint(alias.text()))
                        .map(over -> session.within(
                                over.scope().instance(),
                                () -> Properties.read(
                                        session,
                                        schema.block(),
                                        over.statement().body(),
                                        over.scope(),
                                        Optional.of(written)))))
                .orElse(written);
        Map<String, Setting> settings = new LinkedHashMap<>();
        for (PropertySchema property : schema.block().properties()) {
            said.one(property.name()).ifPresent(given -> session.within(given.scope().instance(), () -> {
                session.suggesting(
                        property.wayOut(Reader.valueSpan(given.property())),
                        () -> reader.setting(given, property)).ifPresent(s -> settings.put(s.name(), s));
                tails(given, property.name(), settings);
            }));
        }
        scope.instance().map(instances::pose).ifPresent(pose -> settings.replaceAll(
                (name, setting) -> pointsSomewhere(name, schema) ? setting.turned(pose) : setting));
        return settings;
    }

    /** Whether a direction is a direction there: `stop from left`; a part may be called left too. */
    private static boolean pointsSomewhere(String name, JointSchema schema) {
        return name.contains(".")
                || schema.block()
                        .property(name)
                        .filter(property -> property.shape() == Shape.Plain.DIRECTION
                                || (property.shape() instanceof Shape.OneOf(List<String> words)
                                        && words.containsAll(Direction.words())))
                        .isPresent();
    }

    /** Where a parameter chooses the kind, what only the other kinds know is passed over. */
    private Optional<dev.treen.syntax.Block> ofKind(Statement.Joint statement, Scope scope, JointSchema schema) {
        Optional<Scope.Parameter> choice = schemas.containsKey(statement.kind().text())
                ? Optional.empty()
                : scope.choice(statement.kind().text());
        return choice.isEmpty()
                ? statement.body()
                : statement.body().map(body -> new dev.treen.syntax.Block(
                        body.span(),
                        body.statements().stream()
                                .filter(s -> !(s instanceof Statement.Property property)
                                        || schema.block().property(property.name().text()).isPresent()
                                        || choice.get().choices().stream()
                                                .map(schemas::get)
                                                .filter(java.util.Objects::nonNull)
                                                .noneMatch(other -> other.block()
                                                        .property(property.name().text())
                                                        .isPresent()))
                                .toList()));
    }

    /** {@code stop 3/8 from front} gives a second setting, {@code stop.from}. */
    private static void tails(Properties.Given given, String name, Map<String, Setting> settings) {
        given.property().values().stream().flatMap(v -> v.tails().stream()).forEach(tail -> tail.argument()
                .filter(Expr.Word.class::isInstance)
                .map(Expr.Word.class::cast)
                .ifPresent(word -> {
                    String key = name + "." + tail.word().text();
                    Datum value = new Datum.Word(word.name());
                    settings.put(
                            key,
                            new Setting(
                                    key,
                                    tail.word().span(),
                                    word.span(),
                                    value,
                                    Derivation.written(key, value, word.span())));
                }));
    }

    private void join(Making making, Statement.Pair pair, Part left, Part right) {
        if (left.is(right)) {
            session.add(Finding.of(
                    ModelFindings.JOINED_WRONGLY,
                    pair.span(),
                    "`" + left.name() + "` is joined to itself")
                    .because("A joint is cut where two parts meet.")
                    .remedy(Remedy.choice("name the part that `" + left.name() + "` meets"))
                    .build());
            return;
        }
        Statement.Joint statement = making.statement();
        Span inside = statement
                .body()
                .map(b -> b.span().pointAt(1))
                .orElse(statement.span().endPoint());
        String kind = making.schema().kind();
        String name = statement
                .alias()
                .map(Name::text)
                .map(alias -> making.scope().prefix() + alias)
                .orElse(kind + " " + left.name() + (pair.into() ? " into " : " to ") + right.name());
        made.add(new Joint(
                kind,
                statement.kind().span(),
                name,
                making.number(),
                left,
                right,
                pair.into(),
                making.settings(),
                pair.span(),
                inside,
                statement.body().isPresent()));
    }

    /** The part that is named, or all parts of a row. */
    private List<Part> partsOf(Expr expr, Scope scope) {
        if (expr instanceof Expr.Missing) {
            return List.of();
        }
        Derived derived = expressions.evaluate(expr, scope);
        if (derived.value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind)) {
            switch (kind) {
                case PART -> {
                    return Optional.ofNullable(parts.get(path)).stream().toList();
                }
                case ARRAY -> {
                    List<Part> row = rowOf(expr, scope);
                    if (!row.isEmpty()) {
                        return row;
                    }
                }
                case BOARD, SPECIES, INSTANCE, FILE, PATTERN, PARAMETER, PRESET -> {
                }
            }
        }
        if (!(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "A joint wants the names of parts")
                    .found("`" + Reader.cut(expr.span().text()) + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return List.of();
    }

    private List<Part> rowOf(Expr expr, Scope scope) {
        return expressions.entry(expr, scope).stream()
                .flatMap(entry -> entry instanceof Scope.Array array
                        ? array.elements().values().stream()
                        : java.util.stream.Stream.<Scope.Entry>empty())
                .filter(PartEntry.class::isInstance)
                .map(PartEntry.class::cast)
                .flatMap(entry -> Optional.ofNullable(parts.get(entry.path())).stream())
                .toList();
    }
}

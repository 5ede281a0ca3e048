package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The properties of one block, checked against its schema: unknown words, doubles and strangers are reported here once.
 * A block {@code like} another falls back on that one's properties.
 */
record Properties(Map<String, List<Given>> given, Optional<Properties> like) {

    /** A property as it stands, with the scope whose names it may use. */
    record Given(Statement.Property property, Scope scope) {}

    static final Properties NONE = new Properties(Map.of(), Optional.empty());

    static Properties read(
            Session session, BlockSchema schema, Optional<Block> block, Scope scope, Optional<Properties> like) {
        Map<String, List<Given>> given = new LinkedHashMap<>();
        List<Statement> statements = block.map(Block::statements).orElse(List.of());
        for (Statement statement : statements) {
            switch (statement) {
                case Statement.Property property when schema.property(property.name().text()).isEmpty() ->
                    unknown(session, schema, property, statements);
                case Statement.Property property -> add(session, schema, property, scope, given);
                case Statement.Broken broken -> {
                }
                default -> session.add(Finding.of(
                        ModelFindings.DOES_NOT_BELONG,
                        statement.head(),
                        "This does not belong in the block `" + schema.word() + "`")
                        .found("It may hold " + words(schema) + ".")
                        .build());
            }
        }
        return new Properties(given, like);
    }

    private static String words(BlockSchema schema) {
        List<String> names = schema.properties().stream().map(p -> "`" + p.name() + "`").toList();
        return String.join(", ", names);
    }

    private static void add(
            Session session,
            BlockSchema schema,
            Statement.Property property,
            Scope scope,
            Map<String, List<Given>> given) {
        String name = property.name().text();
        PropertySchema known = schema.property(name).orElseThrow();
        property.body()
                .filter(body -> takesNoBlock(known.shape()))
                .ifPresent(body -> session.add(blockTooMany(schema, known, property, body)));
        List<Given> all = given.computeIfAbsent(name, n -> new ArrayList<>());
        if (!all.isEmpty() && !known.repeats()) {
            session.add(Finding.of(
                    ModelFindings.GIVEN_TWICE,
                    property.name().span(),
                    "`" + name + "` is given twice in one block")
                    .related(all.getFirst().property().name().span(), "first given here; this one counts")
                    .build());
            return;
        }
        all.add(new Given(property, scope));
    }

    private static boolean takesNoBlock(Shape shape) {
        return switch (shape) {
            case Shape.Plain plain -> true;
            case Shape.LengthOrAuto auto -> true;
            case Shape.OneOf words -> true;
            case Shape.Choice choice -> false;
            case Shape.Named named -> false;
            case Shape.Inner inner -> false;
        };
    }

    /** A block behind a value that has none; most often the line before it was not ended. */
    private static Finding blockTooMany(
            BlockSchema schema, PropertySchema known, Statement.Property property, Block body) {
        Finding.Builder finding = Finding.of(
                ModelFindings.DOES_NOT_BELONG,
                body.span().first(1),
                "`" + known.name() + "` takes no block")
                .found("It takes " + known.shape().phrase() + ".")
                .related(property.name().span(), "the block would belong to this");
        property.values().stream()
                .flatMap(value -> value.tails().stream())
                .map(Value.Tail::word)
                .filter(word -> schema.property(word.text()).isPresent())
                .reduce((first, second) -> second)
                .ifPresent(word -> finding.remedy(Remedy.safe(
                        "end the line before `" + word.text() + "`",
                        new Edit(word.span().pointAt(0), "; "))));
        return finding.build();
    }

    private static void unknown(
            Session session, BlockSchema schema, Statement.Property property, List<Statement> block) {
        String name = property.name().text();
        List<String> known = schema.properties().stream().map(PropertySchema::name).toList();
        Set<String> taken = block.stream()
                .filter(Statement.Property.class::isInstance)
                .map(other -> ((Statement.Property) other).name().text())
                .filter(other -> schema.property(other).filter(one -> !one.repeats()).isPresent())
                .collect(Collectors.toSet());
        List<String> near = NearWords.of(name, known);
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_PROPERTY,
                property.name().span(),
                "The block `" + schema.word() + "` has no property `" + name + "`")
                .found("It may hold " + words(schema) + ".");
        if (near.stream().anyMatch(taken::contains)) {
            finding.remedy(Remedy.choice("take this line out: " + NearWords.quoted(near)
                    + (near.size() == 1 ? " is" : " are") + " near, and the block has it already"));
        } else {
            NearWords.remedies(name, property.name().span(), known).forEach(finding::remedy);
        }
        session.add(finding.build());
    }

    /** The property as given here or, failing that, in the block that this one is like. */
    Optional<Given> one(String name) {
        List<Given> here = given.get(name);
        return here == null ? like.flatMap(l -> l.one(name)) : Optional.of(here.getFirst());
    }

    /** Those called one of {@code names}, here or in what this is like. */
    Properties only(Set<String> names) {
        Map<String, List<Given>> kept = new LinkedHashMap<>(given);
        kept.keySet().retainAll(names);
        return new Properties(kept, like.map(l -> l.only(names)));
    }

    /** The same with {@code beyond} behind everything that this falls back on. */
    Properties over(Properties beyond) {
        return new Properties(given, Optional.of(like.map(l -> l.over(beyond)).orElse(beyond)));
    }

    /** The property as given here, then in each block that this falls back on. */
    List<Given> layers(String name) {
        List<Given> layers = new ArrayList<>();
        List<Given> here = given.get(name);
        if (here != null) {
            layers.add(here.getFirst());
        }
        like.ifPresent(l -> layers.addAll(l.layers(name)));
        return layers;
    }

    /** Whether {@code name} is given, here or in what this falls back on, no farther away than {@code than} is. */
    boolean nearer(String name, String than) {
        return given.containsKey(name)
                || (!given.containsKey(than) && like.map(l -> l.nearer(name, than)).orElse(false));
    }

    /** All that are given of a repeating property. */
    List<Given> all(String name) {
        return given.getOrDefault(name, List.of());
    }

    /** All that are given of a repeating property here or, failing that, in the block that this one is like. */
    List<Given> nearest(String name) {
        List<Given> here = all(name);
        return here.isEmpty() ? like.map(l -> l.nearest(name)).orElse(List.of()) : here;
    }

    /** The properties of the block that {@code name} opens, like those of the same block in what this is like. */
    Optional<Properties> inner(Session session, String name, BlockSchema schema) {
        List<Given> here = given.get(name);
        Optional<Properties> beyond = like.flatMap(l -> l.inner(session, name, schema));
        if (here == null) {
            return beyond;
        }
        Given first = here.getFirst();
        return Optional.of(read(session, schema, first.property().body(), first.scope(), beyond));
    }
}

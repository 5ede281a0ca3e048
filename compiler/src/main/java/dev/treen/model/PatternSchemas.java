package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.syntax.Block;
import dev.treen.syntax.Name;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the parameters of a pattern as the schema of its instances. */
final class PatternSchemas {
    /** The words that a parameter's type may be, beside {@code one of}. */
    static final Map<String, Shape> TYPES = types();

    private final Session session;

    PatternSchemas(Session session) {
        this.session = session;
    }

    private static Map<String, Shape> types() {
        Map<String, Shape> types = new LinkedHashMap<>();
        types.put("length", Shape.Plain.LENGTH);
        types.put("size", Shape.Plain.SIZE);
        types.put("count", Shape.Plain.COUNT);
        types.put("angle", Shape.Plain.ANGLE);
        types.put("text", Shape.Plain.TEXT);
        types.put("part", Shape.Plain.PART);
        types.put("board", Shape.Plain.BOARD);
        return types;
    }

    BlockSchema of(Statement.Pattern pattern) {
        List<Statement> body = pattern.body().map(Block::statements).orElse(List.of());
        List<PropertySchema> properties = new ArrayList<>(properties(PatternEntry.paramsOf(body), true));
        Schemas.INSTANCE.properties().stream()
                .filter(own -> properties.stream().noneMatch(p -> p.name().equals(own.name())))
                .toList()
                .forEach(properties::add);
        return new BlockSchema(pattern.name().text(), pattern.doc(), example(pattern, properties), properties);
    }

    private static String example(Statement.Pattern pattern, List<PropertySchema> properties) {
        String needed = String.join(
                "; ", properties.stream().filter(PropertySchema::needed).map(p -> p.name() + " …").toList());
        return pattern.name().text() + " my_" + pattern.name().text() + " { " + needed + " }";
    }

    private List<PropertySchema> properties(List<Statement.Param> params, boolean ofInstance) {
        Map<String, PropertySchema> properties = new LinkedHashMap<>();
        for (Statement.Param param : params) {
            String name = param.name().text();
            if (name.isEmpty()) {
                continue;
            }
            boolean taken = ofInstance && Schemas.INSTANCE.property(name).isPresent();
            if (taken || properties.containsKey(name)) {
                session.add(Finding.of(
                        ModelFindings.SAME_NAME, param.name().span(), "`" + name + "` is the name of two things")
                        .found(properties.containsKey(name)
                                ? "Two parameters have it; the first counts."
                                : "Every instance has a property of that name.")
                        .build());
                continue;
            }
            shape(param).ifPresent(shape -> properties.put(name, property(param, shape)));
        }
        return List.copyOf(properties.values());
    }

    private static PropertySchema property(Statement.Param param, Shape shape) {
        String standard = param.standard().map(e -> e.span().text()).orElse("");
        return param.standard().isPresent()
                ? PropertySchema.optional(param.name().text(), shape, standard, param.doc())
                : PropertySchema.needed(param.name().text(), shape, param.doc());
    }

    private Optional<Shape> shape(Statement.Param param) {
        List<String> choices = param.type().choices().stream()
                .map(Name::text)
                .filter(c -> !c.isEmpty())
                .toList();
        if (!choices.isEmpty()) {
            List<Statement> inner = param.body().map(Block::statements).orElse(List.of());
            List<PropertySchema> options = properties(PatternEntry.paramsOf(inner), false);
            return Optional.of(options.isEmpty()
                    ? new Shape.OneOf(choices)
                    : new Shape.Choice(
                            choices,
                            new BlockSchema(param.name().text(), param.doc(), param.name().text(), options)));
        }
        String type = param.type().name();
        Shape shape = TYPES.get(type);
        if (shape == null) {
            unknownType(param, type);
            return Optional.empty();
        }
        boolean auto = param.standard().filter(Auto::said).isPresent();
        return Optional.of(shape == Shape.Plain.LENGTH && auto ? new Shape.LengthOrAuto() : shape);
    }

    private void unknownType(Statement.Param param, String type) {
        if (type.isEmpty() || type.equals("one of")) {
            return;
        }
        Finding.Builder finding = Finding.of(
                ModelFindings.WRONG_KIND, param.type().span(), "No parameter is of the kind `" + type + "`")
                .found("There are " + NearWords.quoted(List.copyOf(TYPES.keySet())) + " and `one of`.");
        NearWords.remedies(type, param.type().span(), TYPES.keySet()).forEach(finding::remedy);
        session.add(finding.build());
    }
}

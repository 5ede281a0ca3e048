package dev.treen.lsp.feature;

import dev.treen.joinery.FinishedPart;
import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.Datum;
import dev.treen.model.PropertySchema;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Parser;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What hovers say of what a pattern makes, of the pattern, and of the file that it comes from. */
final class ThingHovers {
    private ThingHovers() {
    }

    /** The instance whose name is declared at {@code at}, with the sizes of its parts. */
    static List<String> declared(Document document, Span at, LengthFormat format) {
        Map<String, BlockSchema> patterns = document.analysis().evaluation().patterns();
        return document.analysis().evaluation().symbols().stream()
                .filter(symbol -> Names.same(symbol.nameAt(), at) && patterns.containsKey(symbol.kind()))
                .findFirst()
                .map(instance -> instance(document, instance, format))
                .orElse(List.of());
    }

    /** What is said by the name of a thing. */
    static List<String> said(Document document, Usage usage, LengthFormat format) {
        if (!(usage.value().value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind))) {
            return List.of();
        }
        List<String> named = List.of(kind.name().toLowerCase(java.util.Locale.ROOT) + " `" + path + "`");
        return switch (kind) {
            case PATTERN -> pattern(document, path).orElse(named);
            case INSTANCE -> document.analysis().evaluation().symbols().stream()
                    .filter(symbol -> symbol.name().equals(path))
                    .findFirst()
                    .map(symbol -> instance(document, symbol, format))
                    .orElse(named);
            case PART -> part(document, path, format).orElse(named);
            case PARAMETER -> List.of(); // what it takes and is for is said of the property
            case BOARD, SPECIES, ARRAY, FILE, PRESET -> named;
        };
    }

    /** The file that the path at {@code offset} leads to, and what it declares. */
    static List<String> used(Document document, int offset) {
        Optional<SourceFile> file = Definitions.usedFile(document, offset);
        List<String> lines = new ArrayList<>();
        file.ifPresent(found -> {
            lines.add("file `" + found.name() + "`");
            for (Statement statement : Parser.parse(found).statements()) {
                switch (statement) {
                    case Statement.Pattern(var _, var name, var _, String doc) ->
                        lines.add(listed("pattern", name.text(), doc));
                    case Statement.Board(var _, boolean sheet, var name, var _, String doc) ->
                        lines.add(listed(sheet ? "sheet" : "board", name.text(), doc));
                    case Statement.Let(var _, var name, var _, String doc) ->
                        lines.add(listed("let", name.text(), doc));
                    case Statement other -> {
                    }
                }
            }
        });
        return lines;
    }

    private static String listed(String kind, String name, String doc) {
        return "- " + kind + " `" + name + "`" + (doc.isEmpty() ? "" : ": " + doc.replaceAll("\\s+", " "));
    }

    private static Optional<List<String>> pattern(Document document, String name) {
        return Optional.ofNullable(document.analysis().evaluation().patterns().get(name)).map(schema -> {
            List<String> lines = new ArrayList<>(List.of("pattern `" + name + "`"));
            if (!schema.doc().isEmpty()) {
                lines.add(schema.doc());
            }
            StringBuilder parameters = new StringBuilder();
            for (PropertySchema property : schema.properties()) {
                if (dev.treen.model.Schemas.INSTANCE.property(property.name()).isEmpty()) {
                    parameters.append("- `").append(property.name()).append("` takes ")
                            .append(property.shape().phrase())
                            .append(property.standard().isEmpty() ? "; needed" : "; default " + property.standard())
                            .append('\n');
                }
            }
            lines.add(parameters.toString().stripTrailing());
            lines.add("```treen\n" + schema.example() + "\n```");
            return lines;
        });
    }

    private static List<String> instance(Document document, Symbol instance, LengthFormat format) {
        List<String> lines = new ArrayList<>(List.of(
                "`" + instance.name() + "`, made by pattern `" + instance.kind() + "`"));
        StringBuilder parts = new StringBuilder();
        for (FinishedPart part : document.analysis().joined().parts()) {
            if (part.part().name().startsWith(instance.name() + ".")) {
                parts.append(part.part().name().substring(instance.name().length() + 1)).append("  ")
                        .append(part.finished().text(format)).append(" finished\n");
            }
        }
        if (!parts.isEmpty()) {
            lines.add("```text\n" + parts.toString().stripTrailing() + "\n```");
        }
        return lines;
    }

    private static Optional<List<String>> part(Document document, String name, LengthFormat format) {
        return document.analysis().joined().parts().stream()
                .filter(part -> part.part().name().equals(name))
                .findFirst()
                .map(part -> List.of("part `" + name + "`", "seen " + part.part().seen().text(format),
                        "finished " + part.finished().text(format), "rough " + part.rough().text(format)));
    }
}

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.Library;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.TextEdit;

/**
 * The patterns that can be made an instance of: those in reach, and those that come with Treen and are taken in with
 * it.
 */
final class PatternOffers {
    private PatternOffers() {
    }

    /** The offers; with {@code fields} the whole instance, with what it needs to be told. */
    static List<CompletionItem> of(Document document, int offset, boolean fields) {
        List<CompletionItem> items = new ArrayList<>();
        Map<String, BlockSchema> known = new TreeMap<>(document.analysis().evaluation().patterns());
        known.forEach((name, schema) -> {
            Map<String, String> needed = new LinkedHashMap<>();
            schema.properties().stream().filter(PropertySchema::needed)
                    .forEach(property -> needed.put(property.name(), type(property.shape())));
            items.add(item(name, schema.example(), schema.doc(), needed, fields));
        });
        for (String path : Library.paths()) {
            Library.tree(path).ifPresent(tree -> comesWithTreen(tree).forEach(pattern -> {
                if (!known.containsKey(pattern.name().text())) {
                    CompletionItem item = item(pattern.name().text(), "adds use \"" + path + '"', pattern.doc(),
                            needed(pattern), fields);
                    item.setAdditionalTextEdits(List.of(use(document, path, offset)));
                    items.add(item);
                }
            }));
        }
        return items;
    }

    private static List<Statement.Pattern> comesWithTreen(SyntaxTree tree) {
        return tree.statements().stream().filter(Statement.Pattern.class::isInstance)
                .map(Statement.Pattern.class::cast).toList();
    }

    private static Map<String, String> needed(Statement.Pattern pattern) {
        Map<String, String> needed = new LinkedHashMap<>();
        for (Statement each : pattern.body().map(Block::statements).orElse(List.of())) {
            if (each instanceof Statement.Param param && param.standard().isEmpty()) {
                needed.put(param.name().text(), param.type().name());
            }
        }
        return needed;
    }

    private static String type(Shape shape) {
        return shape == Shape.Plain.LENGTH ? "length" : shape == Shape.Plain.SIZE ? "size" : "";
    }

    /** The fields of a parameter, the first of them with this number. */
    private static List<String> fields(String type, int first) {
        return switch (type) {
            case "length" -> List.of("${" + first + ":300mm}");
            case "size" -> List.of(
                    "${" + first + ":620mm}", "${" + (first + 1) + ":300mm}", "${" + (first + 2) + ":440mm}");
            default -> List.of("$" + first);
        };
    }

    private static CompletionItem item(
            String name, String detail, String doc, Map<String, String> needed, boolean fields) {
        CompletionItem item = Completions.item(name, CompletionItemKind.Class, detail, doc);
        item.setSortText("2" + name);
        if (fields) {
            StringBuilder body = new StringBuilder(name + " ${1:my_" + name + "} {\n");
            int field = 2;
            for (Map.Entry<String, String> each : needed.entrySet()) {
                List<String> filled = fields(each.getValue(), field);
                body.append('\t').append(each.getKey()).append(' ').append(String.join(" x ", filled)).append('\n');
                field += filled.size();
            }
            if (needed.isEmpty()) {
                body.append("\t$").append(field).append('\n');
            }
            item.setInsertText(body.append('}').toString());
            item.setInsertTextFormat(InsertTextFormat.Snippet);
        }
        return item;
    }

    /** Behind the uses that there are, else behind the project's block, else at the top; never behind the cursor. */
    private static TextEdit use(Document document, String path, int offset) {
        int line = 0;
        for (Statement statement : document.analysis().tree().statements()) {
            boolean before = statement instanceof Statement.Use || statement instanceof Statement.Project;
            if (before && statement.span().end() < offset) {
                line = document.file().lineOf(statement.span().end()) + 1;
            }
        }
        int at = Math.min(document.file().lineStart(line), document.file().lineStart(document.file().lineOf(offset)));
        return new TextEdit(document.positions().range(at, at), "use \"" + path + "\"\n");
    }
}

package dev.treen.lsp.feature;

import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Schemas;
import dev.treen.model.Shape;
import dev.treen.model.Symbol;
import dev.treen.syntax.SyntaxTree;
import dev.treen.syntax.Token;
import dev.treen.wood.SpeciesTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What can stand at the cursor: from the schema of the block, and from the names that the project declares. */
public final class Completions {
    private static final List<String> UNITS = List.of("mm", "cm", "m", "in", "ft", "deg", "degC", "degF");

    private final boolean snippets;

    /** Makes completions; whole statements are offered with {@code snippets}. */
    public Completions(boolean snippets) {
        this.snippets = snippets;
    }

    /** The same item with all there is to say of it: its documentation with an example. */
    public CompletionItem resolved(CompletionItem item) {
        Optional<BlockSchema> schema = JointKinds.schemas().stream().map(JointSchema::block)
                .filter(block -> block.word().equals(item.getLabel()))
                .findFirst()
                .or(() -> Schemas.all().stream().filter(b -> b.word().equals(item.getLabel())).findFirst());
        if (item.getKind() == CompletionItemKind.Keyword) {
            schema.ifPresent(block -> item.setDocumentation(new MarkupContent(
                    MarkupKind.MARKDOWN, block.doc() + "\n\n```treen\n" + block.example() + "\n```")));
        }
        return item;
    }

    /** The words that fit at {@code offset}. */
    public List<CompletionItem> at(Document document, int offset) {
        if (isInWords(document, offset)) {
            return List.of();
        }
        Context context = Context.at(document, offset);
        String before = before(document, offset);
        if (before.matches("\\s*joint\\s+\\w*")) {
            Set<String> fitting = JointOffers.fitting(document, offset);
            return JointKinds.schemas().stream().map(schema -> joint(schema, fitting)).toList();
        }
        if (before.matches(".*\\w\\.\\w*")) {
            return List.of("length", "width", "thickness").stream()
                    .map(name -> item(name, CompletionItemKind.Field, "a length", ""))
                    .toList();
        }
        if (context.property().isPresent() || before.matches("\\s*\\w+\\s.*")) {
            return values(document, context, before);
        }
        return context.schema().map(Completions::properties).orElseGet(this::declarations);
    }

    /** In a comment or a text whatever is typed means what its writer means by it; a comment to the end of a line goes on. */
    private static boolean isInWords(Document document, int offset) {
        SyntaxTree tree = document.analysis().tree();
        int behind = tree.tokenBehind(offset);
        if (behind < tree.tokens().size() && tree.tokens().get(behind).start() < offset) {
            return switch (tree.tokens().get(behind).kind()) {
                case COMMENT, DOC_COMMENT, TEXT -> true;
                case WORD, RESERVED, NAME, NUMBER, UNIT, MARK, BRACKET, STRAY, NEW_LINE -> false;
            };
        }
        if (behind == 0 || tree.tokens().get(behind - 1).end() != offset) {
            return false;
        }
        Token before = tree.tokens().get(behind - 1);
        return switch (before.kind()) {
            case COMMENT -> document.file().text().startsWith("//", before.start());
            case DOC_COMMENT -> true;
            case TEXT, WORD, RESERVED, NAME, NUMBER, UNIT, MARK, BRACKET, STRAY, NEW_LINE -> false;
        };
    }

    /** What stands before the cursor in its line and its own statement: a whole block may stand in one line. */
    private static String before(Document document, int offset) {
        String text = document.file().text();
        int begin = document.file().lineStart(document.file().lineOf(offset));
        SyntaxTree tree = document.analysis().tree();
        for (int i = tree.tokenBehind(offset) - 1; i >= 0 && tree.tokens().get(i).start() >= begin; i--) {
            Token token = tree.tokens().get(i);
            if (token.parts(text)) {
                return text.substring(token.end(), offset);
            }
        }
        return text.substring(begin, offset);
    }

    private static List<CompletionItem> properties(BlockSchema schema) {
        List<CompletionItem> items = new ArrayList<>();
        for (PropertySchema property : schema.properties()) {
            items.add(item(property.name(), CompletionItemKind.Property, property.shape().phrase(), property.doc()));
        }
        return items;
    }

    private static List<CompletionItem> values(Document document, Context context, String before) {
        Optional<PropertySchema> property = context.property().or(() -> ofLine(context, before));
        List<CompletionItem> items = new ArrayList<>();
        property.ifPresent(
                p -> ValueWords.of(p.shape()).forEach(w -> items.add(item(w, CompletionItemKind.EnumMember, "", ""))));
        boolean species = property.filter(p -> p.shape() == Shape.Plain.SPECIES).isPresent();
        if (species) {
            SpeciesTable.published()
                    .ids()
                    .forEach(id -> items.add(item(id, CompletionItemKind.EnumMember, "a species", "")));
            return items;
        }
        boolean board = property.filter(p -> p.shape() == Shape.Plain.BOARD).isPresent();
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            boolean fits = !board || symbol.kind().equals("board") || symbol.kind().equals("sheet");
            if (fits) {
                items.add(item(symbol.name(), CompletionItemKind.Variable, symbol.kind(), symbol.doc()));
            }
        }
        if (board) {
            document.analysis().evaluation().project().boards().stream()
                    .flatMap(each -> each.species().stream())
                    .distinct()
                    .forEach(id -> items.add(
                            item(id, CompletionItemKind.EnumMember, "any board of this species", "")));
        }
        if (before.matches(".*\\d\\w*")) {
            UNITS.forEach(unit -> items.add(item(unit, CompletionItemKind.Unit, "unit", "")));
        }
        return items;
    }

    /** The property whose name begins what stands before the cursor. */
    private static Optional<PropertySchema> ofLine(Context context, String before) {
        String last = before.strip();
        int blank = last.indexOf(' ');
        String name = blank < 0 ? last : last.substring(0, blank);
        return context.schema().flatMap(s -> s.property(name));
    }

    private List<CompletionItem> declarations() {
        List<CompletionItem> items = new ArrayList<>();
        for (BlockSchema schema : List.of(Schemas.PROJECT, Schemas.BOARD, Schemas.SHEET, Schemas.PART,
                Schemas.HARDWARE)) {
            items.add(item(schema.word(), CompletionItemKind.Keyword, schema.example(), schema.doc()));
        }
        items.add(item("let", CompletionItemKind.Keyword, "let wall = 9", "Gives a value a name."));
        items.add(item("joint", CompletionItemKind.Keyword, "joint mitre front to left", "Brings parts together."));
        items.add(item("use", CompletionItemKind.Keyword, "use \"rack\"", "Takes in the names of another file."));
        items.add(item(
                "require", CompletionItemKind.Keyword, "require a >= b because \"…\"", "Says what must hold."));
        items.add(item(
                "accept",
                CompletionItemKind.Keyword,
                "accept panel-tight on base because \"…\"",
                "Takes a warning as it is, with a reason."));
        items.add(item("repeat", CompletionItemKind.Keyword, "repeat i in 1..3 { … }", "Makes numbered parts."));
        if (snippets) {
            items.forEach(each -> Snippets.of(each.getLabel()).ifPresent(body -> {
                each.setInsertText(body);
                each.setInsertTextFormat(InsertTextFormat.Snippet);
            }));
        }
        return items;
    }

    /** Kinds that suit the parts come first, and say so. */
    private static CompletionItem joint(JointSchema schema, Set<String> fitting) {
        CompletionItem item = item(
                schema.kind(),
                CompletionItemKind.Keyword,
                schema.into() ? "a into b" : "a to b",
                schema.block().doc());
        if (fitting.contains(schema.kind())) {
            item.setSortText(" " + schema.kind());
            item.setDetail(item.getDetail() + ", suits these parts");
        }
        return item;
    }

    private static CompletionItem item(String label, CompletionItemKind kind, String detail, String doc) {
        CompletionItem item = new CompletionItem(label);
        item.setKind(kind);
        item.setSortText(label.toLowerCase(Locale.ROOT));
        if (!detail.isEmpty()) {
            item.setDetail(detail.replace("`", "")); // plain text wherever it is shown
        }
        if (!doc.isEmpty()) {
            item.setDocumentation(Either.forLeft(doc));
        }
        return item;
    }
}

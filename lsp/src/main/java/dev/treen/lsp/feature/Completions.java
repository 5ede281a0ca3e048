package dev.treen.lsp.feature;

import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.JointSchema;
import dev.treen.model.Library;
import dev.treen.model.PropertySchema;
import dev.treen.model.Schemas;
import dev.treen.model.Shape;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import dev.treen.syntax.Token;
import dev.treen.wood.SpeciesTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What can stand at the cursor: from the schema of the block, and from the names that the project declares. */
public final class Completions {
    private static final List<String> LENGTHS = List.of("mm", "cm", "m", "in", "ft");
    private static final Pattern USE = Pattern.compile("\\s*use\\s+((?:\"[^\"]*)?)");
    private static final Pattern CODE = Pattern.compile("\\s*accept\\s+([\\w-]*)");
    private static final Pattern DOTTED = Pattern.compile(
            "(?:.*[^\\p{L}\\p{M}\\p{Nd}_.\\]])?([\\p{L}_][\\p{L}\\p{M}\\p{Nd}_]*(?:\\[[^\\]]*\\])?"
                    + "(?:\\.[\\p{L}_][\\p{L}\\p{M}\\p{Nd}_]*(?:\\[[^\\]]*\\])?)*)\\.[\\p{L}\\p{Nd}_]*");
    private static final Map<String, String> FUNCTIONS = new TreeMap<>(Map.of(
            "min", "the least of several", "max", "the greatest of several", "abs", "without its sign",
            "round", "to the nearest step: round(x, 5)", "round_up", "to the next step up",
            "round_down", "to the next step down"));

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
        String before = before(document, offset);
        Matcher use = USE.matcher(before);
        if (use.matches()) {
            return files(document, offset, use.group(1).length());
        }
        if (isInWords(document, offset)) {
            return List.of();
        }
        if (before.matches("\\s*joint\\s+\\w*")) {
            Set<String> fitting = JointOffers.fitting(document, offset);
            boolean alone = isLast(document, offset);
            return JointKinds.schemas().stream().map(schema -> joint(schema, fitting, alone)).toList();
        }
        Reach reach = Reach.at(document, offset);
        Matcher dotted = DOTTED.matcher(before);
        if (dotted.matches()) {
            return members(document, reach, dotted.group(1), before);
        }
        Items items = new Items(reach);
        Optional<List<CompletionItem>> head = new Heads(document, items).after(before);
        if (head.isPresent() && isFigure(before) && !before.contains("\"")) {
            return units(Shape.Plain.LENGTH);
        }
        if (head.isPresent()) {
            return marked(document, offset, before, head.get());
        }
        Context context = Context.at(document, offset);
        if (context.property().isPresent() || before.matches("\\s*\\w+\\s.*")) {
            return values(context, items, before);
        }
        return context.schema()
                .map(schema -> properties(document, context, schema, reach, offset))
                .orElseGet(() -> declarations(document, reach, offset));
    }

    /** Items from what is in reach. */
    private final class Items implements Heads.Words {
        private final Reach reach;

        Items(Reach reach) {
            this.reach = reach;
        }

        @Override
        public CompletionItem word(String word, String detail) {
            CompletionItem item = item(word, CompletionItemKind.Keyword, detail, "");
            if (snippets && word.equals("because")) {
                item.setInsertText("because \"$1\"");
                item.setInsertTextFormat(InsertTextFormat.Snippet);
            }
            return item;
        }

        @Override
        public List<CompletionItem> names(List<String> kinds) {
            return reach.of(kinds).stream().map(known -> named(known, "1")).toList();
        }

        @Override
        public List<CompletionItem> reckoned() {
            List<CompletionItem> items = new ArrayList<>();
            reach.of(List.of("let", "param")).forEach(known -> items.add(named(known, "1")));
            reach.of(List.of("part", "instance", "file"))
                    .forEach(known -> items.add(named(known, "2")));
            FUNCTIONS.forEach((name, detail) -> {
                CompletionItem item = item(name, CompletionItemKind.Function, detail, "");
                item.setSortText("3" + name);
                if (snippets) {
                    item.setInsertText(name + "($1)");
                    item.setInsertTextFormat(InsertTextFormat.Snippet);
                }
                items.add(item);
            });
            return items;
        }
    }

    private static CompletionItem named(Reach.Known known, String rank) {
        CompletionItem item = item(known.name(), kind(known.kind()), known.kind(), known.doc());
        item.setSortText(rank + known.name().toLowerCase(Locale.ROOT));
        return item;
    }

    private static CompletionItemKind kind(String kind) {
        return switch (kind) {
            case "let", "param" -> CompletionItemKind.Variable;
            case "part", "instance" -> CompletionItemKind.Class;
            case "board", "sheet" -> CompletionItemKind.Struct;
            case "file" -> CompletionItemKind.Module;
            default -> CompletionItemKind.Field;
        };
    }

    /** What stands behind a dot; in a `require` also what is known once it is made, as how far a shelf sags. */
    private static List<CompletionItem> members(Document document, Reach reach, String path, String before) {
        List<CompletionItem> items = new ArrayList<>();
        reach.members(path).forEach(known -> items.add(named(known, known.kind().equals("measure") ? "1" : "2")));
        if (before.matches("\\s*require\\s.*")) {
            document.analysis().quick().facts().names(path)
                    .forEach(fact -> items.add(item(fact, CompletionItemKind.Field, "known once it is made", "")));
        }
        return items;
    }

    /** A code has marks in it that end a word for many editors: it says itself what it takes the place of. */
    private static List<CompletionItem> marked(
            Document document, int offset, String before, List<CompletionItem> items) {
        Matcher code = CODE.matcher(before);
        if (code.matches()) {
            items.forEach(each -> each.setTextEdit(Either.forLeft(new TextEdit(
                    document.positions().range(offset - code.group(1).length(), offset), each.getLabel()))));
        }
        return items;
    }

    /** The files that can be used: those beside this one, and the patterns that come with Treen. */
    private static List<CompletionItem> files(Document document, int offset, int typed) {
        List<CompletionItem> items = new ArrayList<>();
        Library.paths().forEach(path -> items.add(item(path, CompletionItemKind.Module, "comes with Treen", "")));
        document.beside().forEach(path -> items.add(item(path, CompletionItemKind.File, "", "")));
        String text = document.file().text();
        boolean closed = offset < text.length() && text.charAt(offset) == '"';
        items.forEach(each -> {
            // The quotes belong to what is put in, and so to what an editor compares with what is typed.
            each.setFilterText('"' + each.getLabel());
            each.setTextEdit(Either.forLeft(new TextEdit(document.positions().range(offset - typed, offset),
                    '"' + each.getLabel() + (closed ? "" : "\""))));
        });
        return items;
    }

    /** Whether nothing stands behind the word at {@code offset} in its line: then fields can be put in. */
    private static boolean isLast(Document document, int offset) {
        String text = document.file().text();
        int end = document.file().lineStart(document.file().lineOf(offset))
                + document.file().lineText(document.file().lineOf(offset)).length();
        return offset >= end || text.substring(offset, end).matches("\\s*(?:}.*|//.*)?");
    }

    /**
     * In a comment or a text whatever is typed means what its writer means by it; a comment to the end of a line goes
     * on.
     */
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

    /** The properties of a block that it does not have yet; first those that it needs. */
    private List<CompletionItem> properties(
            Document document, Context context, BlockSchema schema, Reach reach, int offset) {
        List<CompletionItem> items = new ArrayList<>();
        Set<String> given = context.given();
        List<String> boards = reach.of(List.of("board", "sheet")).stream().map(Reach.Known::name).toList();
        boolean fields = snippets && isLast(document, offset);
        for (PropertySchema property : schema.properties()) {
            if (given.contains(property.name()) && !property.repeats()) {
                continue;
            }
            String detail = property.shape().phrase() + (property.needed() ? "; needed" : "");
            CompletionItem item = item(property.name(), CompletionItemKind.Property, detail, property.doc());
            item.setSortText((property.needed() ? "0" : "1") + property.name());
            if (fields) {
                item.setInsertText(Fields.of(property, boards));
                item.setInsertTextFormat(InsertTextFormat.Snippet);
            }
            items.add(item);
        }
        return items;
    }

    private List<CompletionItem> values(Context context, Items items, String before) {
        Optional<PropertySchema> property = context.property().or(() -> ofLine(context, before));
        if (property.isEmpty()) {
            return List.of(); // a name that its maker gives, or a word that is not known here
        }
        Shape shape = property.get().shape();
        if (isFigure(before)) {
            return units(shape);
        }
        String said = Heads.said(before).strip();
        boolean wanted = said.equals(property.get().name()) || Heads.wantsValue(said);
        List<CompletionItem> found = new ArrayList<>();
        if (!wanted) {
            if (shape == Shape.Plain.LENGTH && context.schema().filter(Schemas.PART::equals).isPresent()) {
                found.add(items.word("overall", "with what its joints take"));
            }
            return found;
        }
        ValueWords.of(shape).forEach(word -> {
            CompletionItem item = item(word, CompletionItemKind.EnumMember, "", "");
            item.setSortText("0" + word);
            found.add(item);
        });
        boolean block = shape instanceof Shape.Inner || shape instanceof Shape.Named;
        if (block && snippets && said.equals(property.get().name())) {
            CompletionItem item = item("{ … }", CompletionItemKind.Struct, "a block", property.get().doc());
            item.setFilterText("{");
            fields(item, "{ $1 }");
            found.add(item);
        }
        found.addAll(names(shape, items));
        return found;
    }

    /** Whether what is being typed is a figure, and perhaps its unit. */
    private static boolean isFigure(String before) {
        return before.matches(".*(?<![\\p{L}_])\\d+(?:[./]\\d+)?[A-Za-z]*");
    }

    private static List<CompletionItem> names(Shape shape, Items items) {
        return switch (shape) {
            case Shape.OneOf words -> List.of();
            case Shape.Choice choice -> List.of();
            case Shape.Inner inner -> List.of();
            case Shape.Named named -> items.names(List.of(named.schema().word()));
            case Shape.LengthOrAuto auto -> items.reckoned();
            case Shape.Plain plain -> switch (plain) {
                case LENGTH, SIZE, SIZE_2, SIZE_3, POINT_2, POINT_3, ANGLE, PERCENT, PERCENT_RANGE, TEMPERATURE_RANGE,
                        COUNT, NUMBER, PAIR, MASS, LOAD ->
                    items.reckoned();
                case SPECIES, STUFF -> species(items);
                case BOARD -> boards(items);
                case PART, PARTS -> parts(items);
                case SAW -> items.names(List.of("saw"));
                case ROOM -> items.names(List.of("climate"));
                case TEXT, DIRECTION, FLAWS, RINGS -> List.of();
            };
        };
    }

    private static List<CompletionItem> species(Items items) {
        List<CompletionItem> all = new ArrayList<>(items.names(List.of("species")));
        SpeciesTable.published().all().forEach(wood -> all.add(
                item(wood.id(), CompletionItemKind.EnumMember, SpeciesNotes.shortly(wood), "")));
        return all;
    }

    /** What a part can come from: a board, or any of a species. */
    private static List<CompletionItem> boards(Items items) {
        List<CompletionItem> all = new ArrayList<>(items.names(List.of("board", "sheet")));
        items.reach.woods().forEach(
                id -> all.add(item(id, CompletionItemKind.EnumMember, "any board of this species", "")));
        return all;
    }

    /** The parts that can be named; in the block of an instance those that its pattern makes. */
    private static List<CompletionItem> parts(Items items) {
        return items.reach.instance()
                .map(name -> items.reach.members(name).stream().filter(each -> each.kind().equals("part"))
                        .map(each -> named(each, "1")).toList())
                .filter(inside -> !inside.isEmpty())
                .orElseGet(() -> items.names(List.of("part")));
    }

    private static List<CompletionItem> units(Shape shape) {
        List<String> units = shape instanceof Shape.LengthOrAuto ? LENGTHS : shape instanceof Shape.Plain plain
                ? switch (plain) {
                    case LENGTH, SIZE, SIZE_2, SIZE_3, POINT_2, POINT_3 -> LENGTHS;
                    case ANGLE, RINGS -> List.of("deg");
                    case TEMPERATURE_RANGE -> List.of("degC", "degF");
                    case MASS, LOAD -> List.of("kg", "g", "lb", "oz");
                    case PERCENT, PERCENT_RANGE, COUNT, TEXT, DIRECTION, SPECIES, STUFF, BOARD, PART, PARTS, SAW, ROOM,
                            NUMBER,
                            PAIR, FLAWS ->
                        List.<String>of();
                }
                : List.of();
        return units.stream().map(unit -> item(unit, CompletionItemKind.Unit, "unit", "")).toList();
    }

    /** The property whose name begins what stands before the cursor. */
    private static Optional<PropertySchema> ofLine(Context context, String before) {
        String last = before.strip();
        int blank = last.indexOf(' ');
        String name = blank < 0 ? last : last.substring(0, blank);
        return context.schema().flatMap(s -> s.property(name));
    }

    private List<CompletionItem> declarations(Document document, Reach reach, int offset) {
        List<CompletionItem> items = new ArrayList<>();
        boolean fields = snippets && isLast(document, offset);
        for (BlockSchema schema : List.of(Schemas.PROJECT, Schemas.BOARD, Schemas.SHEET, Schemas.PART,
                Schemas.HARDWARE)) {
            items.add(item(schema.word(), CompletionItemKind.Keyword, schema.example(), schema.doc()));
        }
        Keywords.STATEMENTS.forEach(word -> items.add(
                item(word.word(), CompletionItemKind.Keyword, word.example(), word.doc())));
        if (!reach.inPattern()) {
            items.removeIf(each -> each.getLabel().equals("param"));
        }
        boolean begun = document.analysis().tree().statements().stream()
                .anyMatch(each -> each instanceof Statement.Project && !each.span().touches(offset));
        items.removeIf(each -> begun && each.getLabel().equals("project"));
        if (fields) {
            items.forEach(each -> Snippets.of(each.getLabel()).ifPresent(body -> fields(each, body)));
        }
        // The snippet for an empty file is what a maker needs first; then parts and boards, by their names.
        items.forEach(each -> each.setSortText((each.getLabel().equals("project") ? "0" : "1") + each.getLabel()));
        items.addAll(PatternOffers.of(document, offset, fields));
        return items;
    }

    private static void fields(CompletionItem item, String body) {
        item.setInsertText(body);
        item.setInsertTextFormat(InsertTextFormat.Snippet);
    }

    /** Kinds that suit the parts come first, and say so; where nothing is named yet, with fields for two parts. */
    private CompletionItem joint(JointSchema schema, Set<String> fitting, boolean alone) {
        CompletionItem item = item(
                schema.kind(),
                CompletionItemKind.Keyword,
                schema.into() ? "a into b" : "a to b",
                schema.block().doc());
        if (snippets && alone) {
            fields(item, schema.kind() + (schema.into() ? " $1 into $2" : " $1 to $2"));
        }
        if (fitting.contains(schema.kind())) {
            item.setSortText(" " + schema.kind());
            item.setDetail(item.getDetail() + ", suits these parts");
        }
        return item;
    }

    static CompletionItem item(String label, CompletionItemKind kind, String detail, String doc) {
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

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.SyntaxTree;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What each word is, as the compiler read it, for the editor to colour: whole, in a range, or what has changed. */
public final class Colours {
    private static final List<String> TYPES = List.of("keyword", "property", "variable", "class", "struct", "parameter",
            "macro", "namespace", "number", "type", "string", "comment", "operator");
    private static final List<String> MODIFIERS = List.of("declaration", "documentation");
    private static final int DECLARATION = 1;
    private static final int DOCUMENTATION = 2;
    private static final int FIVE = 5;

    private final Map<String, SemanticTokens> last = new HashMap<>();
    private long made;

    /** Remembers what each file was last told, to tell only the change. */
    public Colours() {
    }

    /** The names of types and modifiers, by number. */
    public static SemanticTokensLegend legend() {
        return new SemanticTokensLegend(TYPES, MODIFIERS);
    }

    /** All words of a document. */
    public synchronized SemanticTokens whole(Document document) {
        SemanticTokens tokens = new SemanticTokens(
                Long.toString(++made), data(document, 0, document.file().text().length()));
        last.put(document.uri(), tokens);
        return tokens;
    }

    /** The words that {@code range} touches. */
    public SemanticTokens in(Document document, Range range) {
        Positions.Span span = document.positions().span(range);
        return new SemanticTokens(data(document, span.start(), span.end()));
    }

    /** What has changed since the answer called {@code before}, or everything where that is forgotten. */
    public synchronized Either<SemanticTokens, SemanticTokensDelta> since(Document document, String before) {
        SemanticTokens old = last.get(document.uri());
        SemanticTokens now = whole(document);
        if (old == null || !before.equals(old.getResultId())) {
            return Either.forLeft(now);
        }
        List<Integer> was = old.getData();
        List<Integer> is = now.getData();
        int least = Math.min(was.size(), is.size());
        int same = 0;
        while (same < least && was.get(same).equals(is.get(same))) {
            same++;
        }
        same -= same % FIVE;
        int rest = 0;
        while (rest < least - same && was.get(was.size() - 1 - rest).equals(is.get(is.size() - 1 - rest))) {
            rest++;
        }
        rest -= rest % FIVE;
        List<SemanticTokensEdit> edits = same == was.size() && same == is.size()
                ? List.of()
                : List.of(new SemanticTokensEdit(
                        same, was.size() - same - rest, List.copyOf(is.subList(same, is.size() - rest))));
        return Either.forRight(new SemanticTokensDelta(edits, now.getResultId()));
    }

    /** Forgets a file that has been closed. */
    public synchronized void forget(String uri) {
        last.remove(uri);
    }

    private static List<Integer> data(Document document, int from, int to) {
        Map<Integer, String> names = new HashMap<>();
        Set<Integer> declared = new HashSet<>();
        names(document, names, declared);
        SyntaxTree tree = document.analysis().tree();
        List<Integer> data = new ArrayList<>(FIVE * tree.tokens().size());
        SourceFile file = document.file();
        Position before = new Position(0, 0);
        int line = 0;
        for (Token token : tree.tokens()) {
            String type = type(token, names);
            if (type.isEmpty() || token.end() < from || token.start() > to) {
                continue;
            }
            int modifiers = declared.contains(token.start()) ? DECLARATION
                    : token.kind() == Token.Kind.DOC_COMMENT ? DOCUMENTATION : 0;
            while (line + 1 < file.lineCount() && file.lineStart(line + 1) <= token.start()) {
                line++;
            }
            for (int part = line; part < file.lineCount() && file.lineStart(part) < token.end(); part++) {
                boolean over = part + 1 < file.lineCount() && file.lineStart(part + 1) < token.end();
                int start = Math.max(token.start(), file.lineStart(part));
                int end = over || part > line
                        ? Math.min(token.end(), file.lineStart(part) + file.lineText(part).length())
                        : token.end();
                if (end <= start) {
                    continue;
                }
                Position at = document.positions().position(start);
                int length = document.positions().position(end).getCharacter() - at.getCharacter();
                int down = at.getLine() - before.getLine();
                data.add(down);
                data.add(down == 0 ? at.getCharacter() - before.getCharacter() : at.getCharacter());
                data.add(length);
                data.add(TYPES.indexOf(type));
                data.add(modifiers);
                before = at;
            }
        }
        return data;
    }

    /** A place in a file, whichever reading of it. */
    private record Place(String file, int start) {
        static Place of(Span span) {
            return new Place(span.source().name(), span.start());
        }
    }

    /** What names stand for, by where they stand, and where they are declared. */
    private static void names(Document document, Map<Integer, String> names, Set<Integer> declared) {
        Map<Place, String> kinds = new HashMap<>();
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            String type = type(symbol.kind());
            kinds.put(Place.of(symbol.nameAt()), type);
            if (Names.isIn(symbol.nameAt(), document)) {
                names.put(symbol.nameAt().start(), type);
                declared.add(symbol.nameAt().start());
            }
        }
        for (Usage usage : document.analysis().evaluation().usages()) {
            if (Names.isIn(usage.at(), document)) {
                boolean name = usage.at().text().startsWith(usage.declaredAt().text());
                names.putIfAbsent(usage.at().start(),
                        name ? kinds.getOrDefault(Place.of(usage.declaredAt()), "variable") : "property");
            }
        }
    }

    private static String type(String kind) {
        return switch (kind) {
            case "let" -> "variable";
            case "board", "sheet" -> "struct";
            case "part" -> "class";
            case "pattern" -> "macro";
            case "file" -> "namespace";
            case "param" -> "parameter";
            default -> "class";
        };
    }

    private static String type(Token token, Map<Integer, String> names) {
        return switch (token.kind()) {
            case WORD, RESERVED -> "keyword";
            case NAME -> names.getOrDefault(token.start(), "property");
            case NUMBER -> "number";
            case UNIT -> "type";
            case TEXT -> "string";
            case COMMENT, DOC_COMMENT -> "comment";
            case MARK -> "operator";
            case BRACKET, STRAY, NEW_LINE -> "";
        };
    }
}

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.source.Span;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        Map<Integer, String> names = names(document);
        Map<Integer, Boolean> declared = new HashMap<>();
        document.analysis().evaluation().symbols().forEach(symbol -> {
            if (Names.isIn(symbol.nameAt(), document)) {
                declared.put(symbol.nameAt().start(), true);
            }
        });
        List<Integer> data = new ArrayList<>();
        Position before = new Position(0, 0);
        for (Token token : document.analysis().tree().tokens()) {
            String type = type(token, names);
            if (type.isEmpty() || token.end() < from || token.start() > to) {
                continue;
            }
            int modifiers = declared.containsKey(token.start()) ? DECLARATION
                    : token.kind() == Token.Kind.DOC_COMMENT ? DOCUMENTATION : 0;
            for (int line = document.file().lineOf(token.start()); line <= document.file()
                    .lineOf(token.end() - 1); line++) {
                int lineStart = document.file().lineStart(line);
                int start = Math.max(token.start(), lineStart);
                int end = Math.min(token.end(), lineStart + document.file().lineText(line).length());
                if (end <= start) {
                    continue;
                }
                Position at = document.positions().position(start);
                int length = document.positions().position(end).getCharacter() - at.getCharacter();
                int down = at.getLine() - before.getLine();
                data.addAll(List.of(down, down == 0 ? at.getCharacter() - before.getCharacter() : at.getCharacter(),
                        length, TYPES.indexOf(type), modifiers));
                before = at;
            }
        }
        return data;
    }

    /** What names stand for, by where they stand. */
    private static Map<Integer, String> names(Document document) {
        Map<String, String> kinds = new HashMap<>();
        Map<Integer, String> names = new HashMap<>();
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            kinds.put(place(symbol.nameAt()), type(symbol.kind()));
            if (Names.isIn(symbol.nameAt(), document)) {
                names.put(symbol.nameAt().start(), type(symbol.kind()));
            }
        }
        for (Usage usage : document.analysis().evaluation().usages()) {
            if (Names.isIn(usage.at(), document)) {
                boolean name = usage.at().text().startsWith(usage.declaredAt().text());
                names.putIfAbsent(usage.at().start(),
                        name ? kinds.getOrDefault(place(usage.declaredAt()), "variable") : "property");
            }
        }
        return names;
    }

    private static String place(Span span) {
        return span.file().name() + ' ' + span.start();
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

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Token;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.jspecify.annotations.Nullable;

/**
 * What each word is, as the compiler read it, for the editor to colour: whole, in a range, or what has changed. Asked after
 * each keystroke, so that it counts in plain numbers: five for each word, as the protocol has them.
 */
public final class Colours {
    private static final List<String> MODIFIERS = List.of("declaration", "documentation");
    private static final int DECLARATION = 1;
    private static final int DOCUMENTATION = 2;
    private static final int FIVE = 5;

    private final Map<String, Told> last = new HashMap<>();
    private long made;

    /** An answer under the name by which the editor asks for what has changed since. */
    private static final class Told {
        private final String id;
        private final int[] figures;

        Told(String id, int[] figures) {
            this.id = id;
            this.figures = figures;
        }

        SemanticTokens whole() {
            return new SemanticTokens(id, new Figures(figures, 0, figures.length));
        }
    }

    /** A stretch of figures as the protocol's library takes them. */
    private static final class Figures extends AbstractList<Integer> implements RandomAccess {
        private final int[] all;
        private final int from;
        private final int to;

        Figures(int[] all, int from, int to) {
            this.all = all;
            this.from = from;
            this.to = to;
        }

        @Override
        public Integer get(int index) {
            return all[from + index];
        }

        @Override
        public int size() {
            return to - from;
        }
    }

    /** Remembers what each file was last told, to tell only the change. */
    public Colours() {
    }

    /** The names of types and modifiers, by number. */
    public static SemanticTokensLegend legend() {
        return new SemanticTokensLegend(WordType.legend(), MODIFIERS);
    }

    /** All words of a document. */
    public synchronized SemanticTokens whole(Document document) {
        return tell(document).whole();
    }

    /** The words that {@code range} touches. */
    public SemanticTokens in(Document document, Range range) {
        Positions.Span span = document.positions().span(range);
        int[] figures = figures(document, span.start(), span.end());
        return new SemanticTokens(new Figures(figures, 0, figures.length));
    }

    /** What has changed since the answer called {@code before}, or everything where that is forgotten. */
    public synchronized Either<SemanticTokens, SemanticTokensDelta> since(Document document, String before) {
        Told old = last.get(document.uri());
        Told now = tell(document);
        if (old == null || !before.equals(old.id)) {
            return Either.forLeft(now.whole());
        }
        return Either.forRight(new SemanticTokensDelta(edits(old.figures, now.figures), now.id));
    }

    /** Forgets a file that has been closed. */
    public synchronized void forget(String uri) {
        last.remove(uri);
    }

    private Told tell(Document document) {
        Told told = new Told(Long.toString(++made), figures(document, 0, document.file().text().length()));
        last.put(document.uri(), told);
        return told;
    }

    private static List<SemanticTokensEdit> edits(int[] was, int[] is) {
        int differs = Arrays.mismatch(was, is);
        if (differs < 0) {
            return List.of();
        }
        int same = differs - differs % FIVE;
        int least = Math.min(was.length, is.length);
        int rest = 0;
        while (rest < least - same && was[was.length - 1 - rest] == is[is.length - 1 - rest]) {
            rest++;
        }
        rest -= rest % FIVE;
        return List.of(new SemanticTokensEdit(
                same, was.length - same - rest, List.copyOf(new Figures(is, same, is.length - rest))));
    }

    private static int[] figures(Document document, int from, int to) {
        NamedWords words = new NamedWords(document);
        Writing writing = new Writing(document);
        SourceFile file = document.file();
        int line = 0;
        List<Token> tokens = document.analysis().tree().tokens();
        Token before = null;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            WordType type = type(token, words, before, i + 1 < tokens.size() ? tokens.get(i + 1) : null);
            before = type == WordType.COMMENT ? before : token;
            if (type == WordType.NONE || token.end() < from || token.start() > to) {
                continue;
            }
            int modifiers = words.declaredAt(token.start()) ? DECLARATION
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
                writing.word(part, start, end, type, modifiers);
            }
        }
        return writing.figures();
    }

    /** Five figures a word: lines and characters from the word before, how long it is, what it is. */
    private static final class Writing {
        private final Positions positions;
        private int[] figures;
        private int count;
        private int line;
        private int character;

        Writing(Document document) {
            this.positions = document.positions();
            this.figures = new int[FIVE * document.analysis().tree().tokens().size() + FIVE];
        }

        void word(int at, int start, int end, WordType type, int modifiers) {
            if (end <= start) {
                return;
            }
            int begins = positions.character(at, start);
            if (count + FIVE > figures.length) {
                figures = Arrays.copyOf(figures, 2 * figures.length);
            }
            figures[count++] = at - line;
            figures[count++] = at == line ? begins - character : begins;
            figures[count++] = positions.character(at, end) - begins;
            figures[count++] = type.number();
            figures[count++] = modifiers;
            line = at;
            character = begins;
        }

        int[] figures() {
            return Arrays.copyOf(figures, count);
        }
    }

    private static WordType type(
            Token token, NamedWords words, @Nullable Token before, @Nullable Token behind) {
        return switch (token.kind()) {
            case WORD, RESERVED -> WordType.KEYWORD;
            case NAME -> words.at(token.start()).orElseGet(() -> words.otherwise(token, before, behind));
            case NUMBER -> WordType.NUMBER;
            case UNIT -> WordType.TYPE;
            case TEXT -> WordType.STRING;
            case COMMENT, DOC_COMMENT -> WordType.COMMENT;
            case MARK -> WordType.OPERATOR;
            case BRACKET, STRAY, NEW_LINE -> WordType.NONE;
        };
    }
}

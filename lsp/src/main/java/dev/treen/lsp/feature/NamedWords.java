package dev.treen.lsp.feature;

import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.source.Span;
import dev.treen.syntax.Token;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What names stand for, by where they stand in a document, and where they are declared. One byte for each place of the text:
 * it is made after each keystroke.
 */
final class NamedWords {
    private final Document document;
    /** For each place one more than the number of the type, or nothing. */
    private final byte[] declared;
    private final byte[] said;
    private final Set<String> values;
    private final Map<Place, WordType> elsewhere = new HashMap<>();

    NamedWords(Document document) {
        this.document = document;
        int length = document.file().text().length() + 1;
        this.declared = new byte[length];
        this.said = new byte[length];
        this.values = ValueWords.all(document.analysis().evaluation().patterns().values());
        document.analysis().evaluation().symbols().forEach(this::declare);
        document.analysis().evaluation().usages().forEach(this::say);
    }

    /** A place in another file. */
    private record Place(String file, int start) {
        static Place of(Span span) {
            return new Place(span.source().name(), span.start());
        }
    }

    /** Whether a name is declared at {@code start}. */
    boolean declaredAt(int start) {
        return declared[start] != 0;
    }

    /** What the name at {@code start} stands for; empty where it is none that is declared. */
    Optional<WordType> at(int start) {
        int known = declared[start] != 0 ? declared[start] : said[start];
        return known == 0 ? Optional.empty() : Optional.of(WordType.numbered(known - 1));
    }

    /** What a word is that names nothing declared, by the word, mark or line end before it and the mark behind it. */
    WordType otherwise(Token word, @Nullable Token before, @Nullable Token behind) {
        String text = document.file().text();
        if (before == null || before.parts(text) || text.startsWith(".", before.start())) {
            return WordType.PROPERTY;
        }
        String said = text.substring(word.start(), word.end());
        if (before.kind() == Token.Kind.WORD) {
            return JointKinds.named(said).isPresent() ? WordType.TYPE : WordType.VARIABLE;
        }
        if (behind != null && text.startsWith("(", behind.start())) {
            return WordType.FUNCTION;
        }
        return values.contains(said) ? WordType.ENUM_MEMBER : WordType.VARIABLE;
    }

    private void declare(Symbol symbol) {
        WordType type = WordType.ofKind(symbol.kind());
        if (Names.isIn(symbol.nameAt(), document)) {
            declared[symbol.nameAt().start()] = (byte) (type.number() + 1);
        } else {
            elsewhere.put(Place.of(symbol.nameAt()), type);
        }
    }

    private void say(Usage usage) {
        if (Names.isIn(usage.at(), document) && said[usage.at().start()] == 0) {
            // Some uses only rest on a declaration, such as the width of a part on the part.
            WordType type = usage.at().startsWith(usage.declaredAt())
                    ? declaredAs(usage.declaredAt())
                    : WordType.PROPERTY;
            said[usage.at().start()] = (byte) (type.number() + 1);
        }
    }

    private WordType declaredAs(Span at) {
        if (!Names.isIn(at, document)) {
            return elsewhere.getOrDefault(Place.of(at), WordType.VARIABLE);
        }
        int known = declared[at.start()];
        return known == 0 ? WordType.VARIABLE : WordType.numbered(known - 1);
    }
}

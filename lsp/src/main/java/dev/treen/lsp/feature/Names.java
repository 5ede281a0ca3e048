package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a name at the cursor stands for: where it is declared, and every place that says it. */
final class Names {
    private Names() {
    }

    /** Where the name at {@code offset} is declared, as the span of the name there. */
    static Optional<Span> declared(Document document, int offset) {
        Optional<Span> here = document.analysis().evaluation().symbols().stream()
                .map(Symbol::nameAt)
                .filter(at -> isIn(at, document) && at.touches(offset))
                .findFirst();
        return here.or(() -> said(document)
                .filter(usage -> place(usage).touches(offset))
                .map(Usage::declaredAt)
                .min(Comparator.comparingInt(Span::start)));
    }

    /** Every place in {@code among} that says the name declared at {@code declared}, that one first. */
    static List<Span> places(Collection<Document> among, Span declared) {
        Map<String, Span> places = new LinkedHashMap<>();
        places.put(key(declared), declared);
        for (Document document : among) {
            document.analysis().evaluation().usages().stream()
                    .filter(Names::saysTheName)
                    .filter(usage -> same(usage.declaredAt(), declared))
                    .map(Names::place)
                    .sorted(Comparator.comparingInt(Span::start))
                    .forEach(place -> places.putIfAbsent(key(place), place));
        }
        return List.copyOf(places.values());
    }

    /** Whether two spans are the same place, each perhaps in an older or newer reading of the file. */
    static boolean same(Span one, Span other) {
        return one.start() == other.start() && one.end() == other.end()
                && one.file().name().equals(other.file().name());
    }

    static boolean isIn(Span span, Document document) {
        return span.file().name().equals(document.file().name());
    }

    private static Stream<Usage> said(Document document) {
        return document.analysis().evaluation().usages().stream()
                .filter(usage -> isIn(usage.at(), document))
                .filter(Names::saysTheName);
    }

    /** Some uses only rest on a declaration, such as the width of a part on the part. */
    private static boolean saysTheName(Usage usage) {
        return usage.at().startsWith(usage.declaredAt());
    }

    /** The name alone, without an index behind it. */
    private static Span place(Usage usage) {
        SourceFile file = usage.at().file();
        int start = usage.at().start();
        return file.span(start, start + usage.declaredAt().end() - usage.declaredAt().start());
    }

    private static String key(Span span) {
        return span.file().name() + ' ' + span.start();
    }
}

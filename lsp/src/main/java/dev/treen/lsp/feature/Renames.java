package dev.treen.lsp.feature;

import dev.treen.finding.Finding;
import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.model.FileLoader;
import dev.treen.model.Library;
import dev.treen.model.Symbol;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/** Another name for a thing, in all files at once; refused where it would change what anything means. */
public final class Renames {
    private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*");
    private static final Set<String> RESERVED = Set.of("and", "or", "not", "true", "false", "let", "require", "when",
            "then", "else");

    private final PositionEncoding encoding;

    /** Places as {@code encoding} counts them. */
    public Renames(PositionEncoding encoding) {
        this.encoding = encoding;
    }

    /** The name that would be changed; empty where the cursor stands on none. */
    public Optional<PrepareRenameResult> prepare(Document document, int offset) {
        return Names.declared(document, offset)
                .filter(declared -> !isTreens(declared))
                .flatMap(declared -> Names.places(List.of(document), declared).stream()
                        .filter(each -> Names.isIn(each, document) && each.touches(offset))
                        .findFirst())
                .map(each -> new PrepareRenameResult(
                        document.positions().range(each.start(), each.end()), each.text()));
    }

    /**
     * The edits that give the name at {@code offset} another.
     *
     * @throws ResponseErrorException with the reason, where that cannot be done
     */
    public WorkspaceEdit to(Document document, List<Document> among, int offset, String name) {
        Span declared = Names.declared(document, offset).orElseThrow(() -> refused("there is no name here to change"));
        if (isTreens(declared)) {
            throw refused("`" + declared.text() + "` is a name in a pattern that comes with Treen, and keeps it");
        }
        if (!NAME.matcher(name).matches() || RESERVED.contains(name)) {
            throw refused("`" + name + "` cannot be a name: letters, digits and _ make one, and no reserved word");
        }
        List<Span> places = Names.places(among, declared);
        for (Document each : among) {
            each.analysis().evaluation().symbols().stream()
                    .map(Symbol::nameAt)
                    .filter(at -> at.text().equals(name) && places.stream()
                            .anyMatch(place -> place.file().name().equals(at.file().name())))
                    .findFirst()
                    .ifPresent(taken -> {
                        throw refused("`" + name + "` is the name of something else, line " + taken.line() + " of "
                                + taken.file().name());
                    });
        }
        unread(among, declared).ifPresent(why -> {
            throw refused(why);
        });
        sameAfter(among, places, name);
        Places client = new Places(among, encoding);
        Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
        places.forEach(place -> edits.computeIfAbsent(client.uri(place), u -> new ArrayList<>())
                .add(new TextEdit(client.range(place), name)));
        return new WorkspaceEdit(edits);
    }

    /** A pattern that no project uses is not evaluated, so that it is not known what its words stand for. */
    private static Optional<String> unread(List<Document> among, Span declared) {
        for (Document each : among) {
            Set<Integer> known = new java.util.HashSet<>();
            each.analysis().evaluation().usages().forEach(usage -> known.add(usage.at().start()));
            for (Statement statement : each.analysis().tree().statements()) {
                boolean unread = statement instanceof Statement.Pattern pattern
                        && each.analysis().evaluation().usages().stream()
                                .noneMatch(usage -> Names.same(usage.declaredAt(), pattern.name().span()));
                if (unread && each.analysis().tree().tokens().stream()
                        .filter(token -> token.kind() == Token.Kind.NAME || token.kind() == Token.Kind.WORD)
                        .filter(token -> statement.span().start() <= token.start()
                                && token.end() <= statement.span().end())
                        .filter(token -> !(Names.isIn(declared, each) && token.start() == declared.start()))
                        .anyMatch(token -> each.file().text().substring(token.start(), token.end())
                                .equals(declared.text()))) {
                    return Optional.of("line " + (each.file().lineOf(statement.span().start()) + 1) + " of "
                            + each.file().name() + " begins a pattern that nothing uses, and it is not known whether"
                            + " `" + declared.text() + "` in it is this one");
                }
            }
        }
        return Optional.empty();
    }

    /** Compiles everything under the new name: what is said of it must stay the same. */
    private void sameAfter(List<Document> among, List<Span> places, String name) {
        Map<String, String> texts = new HashMap<>();
        for (Document each : among) {
            StringBuilder text = new StringBuilder(each.file().text());
            places.stream()
                    .filter(place -> Names.isIn(place, each))
                    .sorted(java.util.Comparator.comparingInt(Span::start).reversed())
                    .forEach(place -> text.replace(place.start(), place.end(), name));
            texts.put(each.file().name(), text.toString());
        }
        for (Document each : among) {
            FileLoader loader = (path, from) -> each.used(path, from)
                    .map(file -> new SourceFile(file.name(), texts.getOrDefault(file.name(), file.text())));
            Compilation after = Compilation.of(
                    new SourceFile(each.file().name(), texts.getOrDefault(each.file().name(), "")), loader);
            if (!codes(after).equals(codes(each.analysis()))) {
                throw refused("with that name " + each.file().name() + " would mean something else");
            }
        }
    }

    private static List<String> codes(Compilation compilation) {
        return compilation.quick().findings().stream().map(Finding::code).toList();
    }

    private static boolean isTreens(Span declared) {
        return Library.tree(declared.file().name()).isPresent();
    }

    private static ResponseErrorException refused(String why) {
        return new ResponseErrorException(new ResponseError(ResponseErrorCode.RequestFailed, why, null));
    }
}

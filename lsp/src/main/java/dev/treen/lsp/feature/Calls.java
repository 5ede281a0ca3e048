package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CallHierarchyIncomingCall;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCall;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SymbolKind;

/** What depends on a size, and on what it depends: the protocol's call hierarchy, read for values. */
public final class Calls {
    private final PositionEncoding encoding;

    /** Places as {@code encoding} counts them. */
    public Calls(PositionEncoding encoding) {
        this.encoding = encoding;
    }

    /** A statement that has a value or takes part in one. */
    private record Owner(String name, SymbolKind kind, String detail, Span nameAt, Span span) {}

    /** What stands at {@code offset}. */
    public List<CallHierarchyItem> prepare(Document document, List<Document> among, int offset) {
        Places places = new Places(among, encoding);
        return Names.declared(document, offset)
                .flatMap(declared -> owner(among, declared))
                .map(owner -> List.of(item(owner, places)))
                .orElse(List.of());
    }

    /** What uses the value of {@code item}. */
    public List<CallHierarchyIncomingCall> incoming(List<Document> among, CallHierarchyItem item) {
        Places places = new Places(among, encoding);
        Map<Owner, List<Range>> users = new LinkedHashMap<>();
        at(among, item).ifPresent(declared -> {
            for (Span place : Names.places(among, declared)) {
                if (!Names.same(place, declared)) {
                    owner(among, place).ifPresent(
                            owner -> users.computeIfAbsent(owner, o -> new ArrayList<>()).add(places.range(place)));
                }
            }
        });
        return users.entrySet().stream()
                .map(each -> new CallHierarchyIncomingCall(item(each.getKey(), places), each.getValue()))
                .toList();
    }

    /** What the value of {@code item} uses. */
    public List<CallHierarchyOutgoingCall> outgoing(List<Document> among, CallHierarchyItem item) {
        Places places = new Places(among, encoding);
        Map<Owner, List<Range>> used = new LinkedHashMap<>();
        at(among, item).flatMap(declared -> owner(among, declared)).ifPresent(user -> {
            for (Document document : among) {
                for (Usage usage : document.analysis().evaluation().usages()) {
                    boolean inside = usage.at().file().name().equals(user.span().file().name())
                            && user.span().start() <= usage.at().start() && usage.at().end() <= user.span().end();
                    if (inside) {
                        owner(among, usage.declaredAt()).filter(owner -> !owner.equals(user)).ifPresent(owner -> {
                            List<Range> at = used.computeIfAbsent(owner, o -> new ArrayList<>());
                            Range range = places.range(usage.at());
                            if (!at.contains(range)) {
                                at.add(range);
                            }
                        });
                    }
                }
            }
        });
        return used.entrySet().stream()
                .map(each -> new CallHierarchyOutgoingCall(item(each.getKey(), places), each.getValue()))
                .toList();
    }

    private static Optional<Span> at(List<Document> among, CallHierarchyItem item) {
        return among.stream()
                .filter(document -> document.uri().equals(item.getUri()))
                .findFirst()
                .map(document -> {
                    var span = document.positions().span(item.getSelectionRange());
                    return document.file().span(span.start(), span.end());
                });
    }

    /** The innermost declaration that holds {@code place}, or else the statement at the top. */
    private static Optional<Owner> owner(List<Document> among, Span place) {
        Optional<Owner> declared = among.stream()
                .flatMap(document -> document.analysis().evaluation().symbols().stream())
                .filter(symbol -> holds(symbol.span(), place))
                .min(Comparator.comparingInt(symbol -> symbol.span().end() - symbol.span().start()))
                .map(Calls::owner);
        return declared.or(() -> among.stream()
                .filter(document -> Names.isIn(place, document))
                .flatMap(document -> document.analysis().tree().statements().stream())
                .filter(statement -> holds(statement.span(), place))
                .findFirst()
                .map(Calls::owner));
    }

    private static Owner owner(Symbol symbol) {
        Span nameAt = symbol.nameAt();
        return new Owner(nameAt.text(), Outline.kind(symbol.kind()), symbol.kind(), nameAt, symbol.span());
    }

    private static Owner owner(Statement statement) {
        Span span = statement.span();
        String line = span.text().lines().findFirst().orElse("").replaceAll("\\s*\\{.*", "");
        return new Owner(line, SymbolKind.Event, "", span.file().span(span.start(), span.start() + line.length()),
                span);
    }

    private static boolean holds(Span outer, Span inner) {
        return outer.file().name().equals(inner.file().name())
                && outer.start() <= inner.start() && inner.end() <= outer.end();
    }

    private static CallHierarchyItem item(Owner owner, Places places) {
        CallHierarchyItem item = new CallHierarchyItem(owner.name(), owner.kind(), places.uri(owner.nameAt()),
                places.range(owner.span()), places.range(owner.nameAt()));
        if (!owner.detail().isEmpty()) {
            item.setDetail(owner.detail());
        }
        return item;
    }
}

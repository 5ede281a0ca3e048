package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.Symbol;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Name;
import dev.treen.syntax.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The names that can be said where a cursor stands: those of the blocks round it and of the files that are used, but
 * for the one that the statement at the cursor declares itself. Read from the text, so that the body of a pattern has
 * them too, which is evaluated only where it is used.
 */
final class Reach {
    private final Document document;
    private final int offset;
    private final Map<String, Known> names = new LinkedHashMap<>();
    private Optional<String> instance = Optional.empty();
    private boolean inPattern;

    /**
     * A name.
     *
     * @param kind let, param, part, board, sheet, repeat, file, climate, saw, species or instance
     * @param members what can stand behind a dot, beside what it declares inside
     */
    record Known(String name, String kind, String doc, List<String> members) {}

    private static final List<String> SIZES = List.of("length", "width", "thickness");
    private static final List<String> ENDS = List.of("low", "high");

    private Reach(Document document, int offset) {
        this.document = document;
        this.offset = offset;
    }

    static Reach at(Document document, int offset) {
        Reach reach = new Reach(document, offset);
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            if (!Names.isIn(symbol.nameAt(), document) && !symbol.name().contains(".")
                    && !symbol.kind().equals("pattern")) {
                reach.put(symbol.name(), known(symbol.kind()), symbol.doc(), membersOf(symbol.kind()));
            }
        }
        reach.within(document.analysis().tree().statements());
        return reach;
    }

    /** All of one of the kinds. */
    List<Known> of(List<String> kinds) {
        return names.values().stream().filter(each -> kinds.contains(each.kind())).toList();
    }

    /** The species of the boards on the rack. */
    List<String> woods() {
        return document.analysis().evaluation().project().boards().stream()
                .flatMap(each -> each.species().stream())
                .distinct()
                .toList();
    }

    /** The instance in whose block the cursor stands. */
    Optional<String> instance() {
        return instance;
    }

    /** Whether the cursor stands in the block of a pattern. */
    boolean inPattern() {
        return inPattern;
    }

    /** What can stand behind {@code path} and a dot. */
    List<Known> members(String path) {
        String plain = path.replaceAll("\\[[^\\]]*\\]", "");
        Map<String, Known> found = new LinkedHashMap<>();
        Optional.ofNullable(names.get(plain)).ifPresent(known -> known.members()
                .forEach(member -> found.put(member, new Known(member, "measure", "", List.of()))));
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            if (symbol.name().startsWith(plain + ".")) {
                String inner = symbol.name().substring(plain.length() + 1).replaceAll("\\[.*", "");
                if (!inner.contains(".")) {
                    found.putIfAbsent(inner, new Known(inner, known(symbol.kind()), symbol.doc(), List.of()));
                }
            } else if (symbol.name().equals(plain)) {
                membersOf(symbol.kind()).forEach(
                        member -> found.putIfAbsent(member, new Known(member, "measure", "", List.of())));
            }
        }
        return List.copyOf(found.values());
    }

    private void within(List<Statement> statements) {
        for (int i = 0; i < statements.size(); i++) {
            Statement statement = statements.get(i);
            declare(statement);
            boolean last = i + 1 == statements.size() || statements.get(i + 1).span().start() > offset;
            statement.body().filter(body -> Context.isIn(body.span(), offset, last))
                    .ifPresent(body -> inside(statement, body));
        }
    }

    private void inside(Statement statement, Block body) {
        switch (statement) {
            case Statement.Repeat repeat -> put(repeat.variable().text(), "let", "the number of the turn", List.of());
            case Statement.Pattern pattern -> inPattern = true;
            case Statement.Property property when made(property) ->
                instance = property.values().getFirst().expr() instanceof Expr.Word(var _, String name)
                        ? Optional.of(name)
                        : Optional.empty();
            case Statement other -> {
            }
        }
        within(body.statements());
    }

    private void declare(Statement statement) {
        switch (statement) {
            case Statement.Let let -> declare(let, let.name(), "let", let.doc(), members(let.value()));
            case Statement.Param param -> declare(param, param.name(), "param", param.doc(),
                    param.type().name().equals("size") ? SIZES : membersOf(param.type().name()));
            case Statement.Part part -> declare(part, part.name(), "part", part.doc(), SIZES);
            case Statement.Board board ->
                declare(board, board.name(), board.sheet() ? "sheet" : "board", board.doc(), SIZES);
            case Statement.Property property when made(property) || preset(property) -> {
                if (property.values().getFirst().expr() instanceof Expr.Word(Span at, String name)
                        && !at.touches(offset)) {
                    put(name, preset(property) ? property.name().text() : "instance", property.doc(), List.of());
                }
            }
            case Statement.Repeat repeat -> repeat.body().ifPresent(this::declared);
            case Statement.When when -> {
                when.body().ifPresent(this::declared);
                when.otherwise().ifPresent(this::declared);
            }
            case Statement other -> {
            }
        }
    }

    private void declared(Block body) {
        body.statements().forEach(this::declare);
    }

    private boolean made(Statement.Property property) {
        return !property.values().isEmpty()
                && document.analysis().evaluation().patterns().containsKey(property.name().text());
    }

    private static boolean preset(Statement.Property property) {
        return !property.values().isEmpty() && property.body().isPresent()
                && List.of("climate", "saw", "species", "glue", "finish", "hardware").contains(property.name().text());
    }

    private void declare(Statement whole, Name name, String kind, String doc, List<String> members) {
        if (!name.text().isEmpty() && !isHere(whole)) {
            put(name.text(), kind, doc, members);
        }
    }

    /** Whether the cursor stands in a statement, or behind it with nothing between. */
    private boolean isHere(Statement statement) {
        int end = statement.span().end();
        return statement.span().touches(offset)
                || (end < offset && document.file().text().substring(end, offset).matches("[ \\t]*"));
    }

    private void put(String name, String kind, String doc, List<String> members) {
        names.put(name, new Known(name, kind, doc, members));
    }

    private static List<String> members(Expr value) {
        return switch (value) {
            case Expr.Sizes sizes -> sizes.measures().size() < SIZES.size() ? SIZES.subList(0, 2) : SIZES;
            case Expr.Between between -> ENDS;
            default -> List.of();
        };
    }

    private static List<String> membersOf(String kind) {
        return switch (kind) {
            case "part", "board", "sheet" -> SIZES;
            default -> List.of();
        };
    }

    /** An instance is a symbol whose kind is the name of its pattern. */
    private static String known(String kind) {
        return switch (kind) {
            case "let", "param", "part", "board", "sheet", "file", "joint", "pattern" -> kind;
            default -> "instance";
        };
    }
}

package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.wood.SheetGoods;
import java.util.List;
import java.util.Optional;

/** Reads that a part is bought ready: what of, and at what price; and what that rules out. */
final class Bought {
    /** What only those parts have that are made. */
    private static final List<String> OF_MADE = List.of("from", "finish", "glue_up");

    private final Session session;
    private final Reader reader;
    private final BoardReader boards;

    Bought(Session session, Reader reader, BoardReader boards) {
        this.session = session;
        this.reader = reader;
        this.boards = boards;
    }

    /** Whether {@code stuff} is neither wood nor a sheet of it. */
    static boolean foreign(String stuff) {
        return SheetGoods.foreign(stuff).isPresent();
    }

    /** What the part of {@code entry} is bought as, where it is; {@code size} is its length, width and thickness. */
    Optional<Board> read(PartEntry entry, List<Measure> size, Allowances allow) {
        Properties properties = entry.properties();
        Optional<Properties.Given> given = properties.one("bought");
        if (given.isEmpty()) {
            properties.one("price").ifPresent(price -> session.add(Finding.of(
                    ModelFindings.BOUGHT_AND_MADE,
                    price.property().name().span(),
                    "`" + entry.path() + "` has a price and is not bought")
                    .found("What is made costs what its board costs.")
                    .about(entry.path())
                    .remedy(Remedy.choice("say what it is bought as: `bought glass`"))
                    .remedy(Remedy.choice("write the price in the board or sheet that it comes from"))
                    .build()));
            return Optional.empty();
        }
        OF_MADE.forEach(name -> properties.one(name)
                .filter(made -> properties.nearer(name, "bought") && !none(made))
                .ifPresent(made -> session.add(contradicts(entry.path(), given.get(), made))));
        Optional<Expr.Word> word = given.flatMap(g -> reader.anyWord(g, Shape.Plain.STUFF.phrase()));
        return word.map(stuff -> new Board(
                entry.path(),
                entry.nameAt(),
                foreign(stuff.name()) || SheetGoods.get(stuff.name()).isPresent(),
                Optional.of(stuff.name()),
                stuff.span(),
                Optional.ofNullable(session.woods.get(stuff.name())),
                size.get(0),
                size.get(1),
                size.get(2),
                Rings.ASSUMED,
                Optional.empty(),
                entry.nameAt(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                false,
                properties.one("price").flatMap(boards::price),
                List.of(),
                allow));
    }

    private static boolean none(Properties.Given made) {
        return made.property().values().size() == 1
                && made.property().values().getFirst().expr() instanceof Expr.Word word
                && word.name().equals("none");
    }

    private static Finding contradicts(String part, Properties.Given bought, Properties.Given made) {
        String name = made.property().name().text();
        Span said = made.property().span();
        return Finding.of(
                ModelFindings.BOUGHT_AND_MADE,
                made.property().name().span(),
                "`" + part + "` is bought, and `" + name + "` is for what is made")
                .found(switch (name) {
                    case "from" -> "It takes no room on a board.";
                    case "finish" -> "It gets no finish: it is put in when the rest has its own.";
                    default -> "Nobody glues it up: it comes in one piece.";
                })
                .related(bought.property().span(), "it is bought here")
                .about(part)
                .remedy(Remedy.choice("leave out `" + said.text() + "`", new Edit(said, "")))
                .remedy(Remedy.choice("leave out `" + bought.property().span().text() + "`, and make it",
                        new Edit(bought.property().span(), "")))
                .build();
    }
}

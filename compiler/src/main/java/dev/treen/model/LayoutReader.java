package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the block {@code layout} of the project. */
final class LayoutReader {
    private final Session session;
    private final Reader reader;

    LayoutReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
    }

    LayoutWishes read(Properties project) {
        Optional<Properties> block = project.inner(session, "layout", Schemas.LAYOUT);
        if (block.isEmpty()) {
            return LayoutWishes.NONE;
        }
        Properties given = block.get();
        boolean offcutsFirst = given.one("offcuts")
                .flatMap(g -> reader.word(g, Schemas.OFFCUTS))
                .map(word -> word.equals("first"))
                .orElse(false);
        return new LayoutWishes(
                groups(given, "matched"),
                groups(given, "bookmatch").stream().filter(this::two).toList(),
                given.one("resaw").flatMap(g -> reader.word(g, Schemas.RESAW)).filter("never"::equals).isEmpty(),
                given.one("labour").flatMap(g -> reader.percent(g, 1000)).map(p -> p / 100).orElse(LayoutWishes.LABOUR),
                offcutsFirst,
                given.one("keep").flatMap(g -> reader.sizes(g, 2)),
                given.one("steady").flatMap(g -> reader.percent(g, 100)).map(p -> p / 100).orElse(LayoutWishes.STEADY),
                given.one("plain").flatMap(g -> reader.percent(g, 100)).map(p -> p / 100).orElse(0.0),
                takes(given));
    }

    // Which faces a part has is another for each, so a face is said there.
    private Takes takes(Properties given) {
        Takes takes = new TakesReader(session).read(given).orElse(Takes.NONE);
        takes.flaws().stream().filter(each -> each.on().isPresent()).forEach(each -> session.add(Finding.of(
                ModelFindings.DOES_NOT_BELONG, each.at(), "A face is said of a part, not of all parts")
                .found("Write `takes " + each.kind() + " on …` in the part.")
                .build()));
        return new Takes(takes.flaws().stream().filter(each -> each.on().isEmpty()).toList());
    }

    private boolean two(LayoutWishes.Group group) {
        if (group.parts().size() == 2) {
            return true;
        }
        session.add(Finding.of(ModelFindings.WRONG_KIND, group.at(), "`bookmatch` wants two parts")
                .found("A book opens to two leaves; found " + group.parts().size() + " parts.")
                .build());
        return false;
    }

    private List<LayoutWishes.Group> groups(Properties given, String name) {
        return given.all(name).stream().flatMap(g -> group(g).stream()).toList();
    }

    // The parts are declared later, so only their names are read here.
    private Optional<LayoutWishes.Group> group(Properties.Given given) {
        List<String> names = new ArrayList<>();
        for (Value value : given.property().values()) {
            switch (value.expr()) {
                case Expr.Word word -> names.add(word.name());
                case Expr.Member member -> names.add(member.span().text().replaceAll("\\s", ""));
                case Expr.Element element -> names.add(element.span().text().replaceAll("\\s", ""));
                case Expr.Missing missing -> {
                }
                default -> {
                    session.add(Finding.of(
                            ModelFindings.WRONG_KIND,
                            value.expr().span(),
                            "`" + given.property().name().text() + "` wants " + Shape.Plain.PARTS.phrase())
                            .build());
                    return Optional.empty();
                }
            }
        }
        if (names.size() < 2) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND,
                    Reader.valueSpan(given.property()),
                    "`" + given.property().name().text() + "` wants " + Shape.Plain.PARTS.phrase())
                    .found("One part alone has nothing to go with.")
                    .build());
            return Optional.empty();
        }
        return Optional.of(new LayoutWishes.Group(names, Reader.valueSpan(given.property())));
    }
}

package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import java.util.Locale;
import java.util.Optional;

/** Reads the block {@code glue_up} of a part. */
final class GlueUpReader {

    private final Session session;
    private final Reader reader;

    GlueUpReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
    }

    Optional<GlueUp> read(Properties part) {
        Optional<Properties> block = part.inner(session, "glue_up", Schemas.GLUE_UP);
        if (block.isEmpty()) {
            return Optional.empty();
        }
        Properties given = block.get();
        GlueUp.Match match = word(given, "match", GlueUp.Match.values()).orElse(GlueUp.Match.NONE);
        Optional<Integer> staves = given.one("staves").flatMap(g -> reader.count(g, 2, GlueUp.MOST_STAVES));
        if (match == GlueUp.Match.BOOK && staves.filter(count -> count != 2).isPresent()) {
            given.one("staves").ifPresent(g -> session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE, Reader.valueSpan(g.property()),
                    "A book has two leaves: `match book` and more staves do not go together")
                    .remedy(Remedy.choice("write `match board`, or leave out `staves`"))
                    .build()));
            staves = Optional.empty();
        }
        return Optional.of(new GlueUp(
                staves,
                given.one("widest").flatMap(g -> reader.size("widest", g)),
                word(given, "rings", GlueUp.Order.values()).orElse(GlueUp.Order.ALTERNATE),
                match,
                part.one("glue_up").map(g -> g.property().span()).orElseThrow()));
    }

    private <E extends Enum<E>> Optional<E> word(Properties given, String name, E[] values) {
        return given.one(name)
                .flatMap(g -> reader.word(g, Schemas.words(values)))
                .map(word -> Enum.valueOf(values[0].getDeclaringClass(), word.toUpperCase(Locale.ROOT)));
    }
}

package dev.treen.check;

import dev.treen.joinery.Nature;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import dev.treen.wood.Section;
import dev.treen.wood.SheetGoods;
import dev.treen.wood.Shelves;
import dev.treen.wood.Species;
import dev.treen.wood.SpeciesTable;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a part sags under its load after years (rules of the trade S-01 and S-02: Wood Handbook ch. 9). Its ends are
 * taken to rest: no glue at the ends is counted on.
 *
 * @param span the part and what is free of it
 * @param modulusMpa its stiffness, lowered for knots and luck
 * @param loadN all that lies on it, its own weight included
 * @param own its own weight in N
 * @param load what the load is, in words
 * @param sag the outcome
 */
record Sagging(Spans.Span span, double modulusMpa, double loadN, double own, Load load, Shelves.Sag sag) {

    /** What lies on it, in words, with the figure that says so. */
    record Load(double newtons, String words, String source, boolean assumed) {}

    static Optional<Sagging> of(Spans.Span span) {
        Part part = span.part().part();
        OptionalDouble modulus = modulus(part);
        if (modulus.isEmpty()) {
            return Optional.empty();
        }
        Figures figures = Figures.standard();
        double width = part.width().value().toDoubleMm();
        double thickness = part.thickness().value().toDoubleMm();
        double own = Masses.kilograms(span.part()).orElse(0) * figures.value("gravity");
        Load load = load(width * span.spanMm(), figures);
        Section section = Section.board(width, thickness, modulus.getAsDouble());
        double all = own + load.newtons();
        Shelves.Sag sag = Shelves.sag(
                span.spanMm(), section, new Shelves.Load.Even(all / span.spanMm()), Shelves.Ends.RESTING, figures);
        return Optional.of(new Sagging(span, modulus.getAsDouble(), all, own, load, sag));
    }

    private static Load load(double areaMm2, Figures figures) {
        Figure usual = figures.get("shelf.load.other");
        return new Load(
                usual.value() * areaMm2,
                "the usual load of a shelf, 40 lb a square foot (195 kg on a square metre)",
                usual.citation().source(),
                true);
    }

    private static OptionalDouble modulus(Part part) {
        Figures figures = Figures.standard();
        Optional<String> named = part.from().flatMap(Board::species);
        if (part.from().filter(Board::sheet).isPresent()) {
            OptionalDouble sheet = named.flatMap(SheetGoods::get)
                    .or(() -> SheetGoods.get("plywood"))
                    .map(good -> good.modulusOfElasticity())
                    .orElseGet(OptionalDouble::empty);
            return sheet.isPresent()
                    ? OptionalDouble.of(sheet.getAsDouble() * figures.value("shelf.modulus-share"))
                    : sheet;
        }
        Optional<Species> species = named.flatMap(id -> SpeciesTable.published().get(id));
        return species.map(s -> Shelves.modulusMpa(s, figures)).orElseGet(OptionalDouble::empty);
    }

    /** The part's wood in words. */
    String wood(Nature nature) {
        return nature.still() ? "a manufactured sheet" : nature.wood();
    }
}

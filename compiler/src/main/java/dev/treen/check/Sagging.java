package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Weight;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.Service;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import dev.treen.wood.Section;
import dev.treen.wood.SheetGoods;
import dev.treen.wood.Shelves;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a part sags under its load after years (rules of the trade S-01 and S-02: Wood Handbook ch. 9). Its ends are
 * taken to rest: no glue at the ends is counted on.
 *
 * @param span the part and what is free of it
 * @param modulusMpa its stiffness, lowered for knots and luck
 * @param ownN its own weight
 * @param load what lies on it
 * @param sag the outcome
 */
record Sagging(Spans.Span span, double modulusMpa, double ownN, Load load, Shelves.Sag sag) {
    /** The moisture for which the tables of strength are. */
    private static final double TABLE_MOISTURE = 12;

    /**
     * What lies on a part.
     *
     * @param words the load in words
     * @param source who says how much that is
     * @param assumed whether the project is silent
     */
    record Load(double newtons, boolean middle, String words, String source, boolean assumed) {}

    static Optional<Sagging> of(Spans.Span span) {
        OptionalDouble modulus = modulus(span.part().part());
        return modulus.isEmpty()
                ? Optional.empty()
                : Optional.of(of(span, modulus.getAsDouble(), span.part().part().thickness().value().toDoubleMm()));
    }

    /** The same part with another thickness. */
    Sagging thick(double mm) {
        return of(span, modulusMpa, mm);
    }

    private static Sagging of(Spans.Span span, double modulus, double thickness) {
        Figures figures = Figures.standard();
        Part part = span.part().part();
        double width = part.width().value().toDoubleMm();
        double share = thickness / part.thickness().value().toDoubleMm();
        double own = kilograms(span.part()) * share * figures.value("gravity");
        Load load = load(part, span.spanMm(), width * span.spanMm(), figures);
        Section section = Section.board(width, thickness, modulus);
        double even = (own + (load.middle() ? 0 : load.newtons())) / span.spanMm();
        Shelves.Sag spread = Shelves.sag(
                span.spanMm(), section, new Shelves.Load.Even(even), Shelves.Ends.RESTING, figures);
        return new Sagging(span, modulus, own, load, load.middle()
                ? spread.and(
                        Shelves.sag(
                                span.spanMm(),
                                section,
                                new Shelves.Load.Middle(load.newtons()),
                                Shelves.Ends.RESTING,
                                figures),
                        span.spanMm(),
                        figures)
                : spread);
    }

    /** What the shelf itself weighs, at 12 % and by its finished sizes: what its joints take out is on the safe side. */
    private static double kilograms(FinishedPart part) {
        return Shelves.massKg(
                part.length().value().toDoubleMm(),
                part.width().value().toDoubleMm(),
                part.thickness().value().toDoubleMm(),
                Weight.density(part, TABLE_MOISTURE).orElse(0));
    }

    private static Load load(Part part, double spanMm, double areaMm2, Figures figures) {
        if (part.service().carries().isEmpty()) {
            return usual(figures.get("shelf.load.other"), areaMm2, "the usual load of a shelf", true);
        }
        return switch (part.service().carries().get()) {
            case Service.Carried.Mass(double kilograms, boolean middle, var at) -> new Load(
                    kilograms * figures.value("gravity"),
                    middle,
                    "the weight that the project gives" + (middle ? ", in the middle" : ""),
                    "the project",
                    false);
            case Service.Carried.For(String use, var at) -> switch (use) {
                case "books" -> usual(figures.get("shelf.load.books"), spanMm, "books", false);
                case "heavy_books" -> usual(figures.get("shelf.load.books.heavy"), spanMm, "heavy books", false);
                case "library" -> usual(figures.get("shelf.load.library"), areaMm2, "a library", false);
                default -> usual(figures.get("shelf.load.other"), areaMm2, "the usual things of a shelf", false);
            };
        };
    }

    private static Load usual(Figure figure, double over, String what, boolean assumed) {
        return new Load(
                figure.value() * over, false, what + " (" + figure.meaning() + ")", figure.citation().source(),
                assumed);
    }

    private static OptionalDouble modulus(Part part) {
        Figures figures = Figures.standard();
        if (part.still()) {
            OptionalDouble sheet = part.stuff()
                    .flatMap(Board::species)
                    .flatMap(id -> SheetGoods.get(id).or(() -> SheetGoods.foreign(id)))
                    .or(() -> SheetGoods.get("plywood"))
                    .map(good -> good.modulusOfElasticity())
                    .orElseGet(OptionalDouble::empty);
            return sheet.isPresent()
                    ? OptionalDouble.of(sheet.getAsDouble() * figures.value("shelf.modulus-share"))
                    : sheet;
        }
        return part.stuff()
                .flatMap(Woods::of)
                .map(species -> Shelves.modulusMpa(species, figures))
                .orElseGet(OptionalDouble::empty);
    }
}

package dev.treen.joinery;

import dev.treen.model.AnyOf;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.RoomClimate;
import dev.treen.model.Settings;
import dev.treen.wood.Air;
import dev.treen.wood.Climate;
import dev.treen.wood.Coefficient;
import dev.treen.wood.Coefficients;
import dev.treen.wood.Direction;
import dev.treen.wood.Figures;
import dev.treen.wood.Movement;
import dev.treen.wood.Rings;
import dev.treen.wood.Seasons;
import dev.treen.wood.SheetGood;
import dev.treen.wood.SheetGoods;
import dev.treen.wood.Species;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the wood of one part moves through the year in this project's room. Sizes are in millimetres; nature's formulas are
 * the one place where they are not exact.
 *
 * @param across the coefficient of its width
 * @param through the coefficient of its thickness
 * @param seasons its moisture at the bench and at the extremes
 * @param wood the species and its rings in words
 * @param sheet how a manufactured panel moves, where it is one
 * @param climate the air of its room as the tables want it
 * @param air the same as the project writes it, where it does
 * @param humiditySwing dampest less driest air, in points
 * @param assumed what the project is silent about
 */
public record Nature(
        Coefficient across,
        Coefficient through,
        Seasons seasons,
        String wood,
        Optional<SheetGood> sheet,
        Climate climate,
        Optional<RoomClimate> air,
        double humiditySwing,
        Set<Silence> assumed) {

    /** What a project may leave out, so that Treen takes a usual value. */
    public enum Silence {
        /** The air of the room. */
        CLIMATE,
        /** The board's moisture. */
        MOISTURE,
        /** The species. */
        SPECIES,
        /** How the rings lie. */
        RINGS
    }

    /** Keeps its own copy. */
    public Nature {
        assumed = Set.copyOf(assumed);
    }

    /** How {@code part} moves, with the usual values where the project is silent. */
    public static Nature of(Part part, Settings settings) {
        Figures figures = Figures.standard();
        EnumSet<Silence> assumed = EnumSet.noneOf(Silence.class);
        Optional<Board> board = part.stuff();
        Optional<String> named = board.flatMap(Board::species);
        Optional<Species> species = board.flatMap(Woods::of);
        if (named.isEmpty()) {
            assumed.add(Silence.SPECIES);
        }
        if (part.rings().assumed()) {
            assumed.add(Silence.RINGS);
        }
        Coefficients coefficients = species.map(s -> s.coefficientsOrUnknown(figures))
                .orElseGet(() -> Coefficients.ofUnknownSpecies(figures));
        Optional<RoomClimate> air = part.service().room().or(settings::climate);
        if (air.isEmpty()) {
            assumed.add(Silence.CLIMATE);
        }
        Climate room = air.map(Nature::climate).orElseGet(() -> usualRoom(figures));
        if (board.flatMap(Board::moisture).isEmpty()) {
            assumed.add(Silence.MOISTURE);
        }
        double bench = board.flatMap(Board::moisture).orElseGet(() -> figures.value("bench.moisture"));
        Rings rings = ringsOf(part.rings());
        return new Nature(
                Coefficient.of(coefficients, rings, Direction.WIDTH, figures),
                Coefficient.of(coefficients, rings, Direction.THICKNESS, figures),
                // Outside the printed table the room is taken to be as the bench; `climate-out-of-range` says so.
                new Seasons(bench, room.wettest().percentOr(bench), room.driest().percentOr(bench)),
                words(part, species),
                board.filter(Board::sheet).map(b -> sheet(named)),
                room,
                air,
                air.map(a -> a.humidityHigh() - a.humidityLow())
                        .orElseGet(() -> figures.value("room.humidity.to") - figures.value("room.humidity.from")),
                assumed);
    }

    /** The air of a room as the tables want it. */
    public static Climate climate(RoomClimate air) {
        return air.months().isEmpty()
                ? new Climate.Range(air.humidityLow(), air.humidityHigh(), air.coldest(), air.warmest())
                : new Climate.Months(air.months().stream()
                        .map(month -> new Air(month.temperature(), month.humidity()))
                        .toList());
    }

    private static Climate usualRoom(Figures figures) {
        return new Climate.Range(
                figures.value("room.humidity.from"),
                figures.value("room.humidity.to"),
                figures.value("room.temperature.from"),
                figures.value("room.temperature.to"));
    }

    private static String words(Part part, Optional<Species> species) {
        String rings = part.rings().word();
        return rings + (rings.endsWith("°") ? " rings" : "-sawn") + (part.rings().assumed() ? " (assumed) " : " ")
                + species.map(Species::commonName).orElse("wood of no known species")
                + part.anyOf().filter(AnyOf::differs)
                        .flatMap(any -> part.from())
                        .map(board -> " (as `" + board.name()
                                + "`: of the boards that it may come from, the one that moves most)")
                        .orElse("");
    }

    /** A manufactured panel of no known kind moves as plywood does. */
    private static SheetGood sheet(Optional<String> named) {
        return named.flatMap(SheetGoods::get)
                .or(() -> named.flatMap(SheetGoods::foreign))
                .or(() -> SheetGoods.get("plywood"))
                .orElseGet(() -> SheetGoods.all().getFirst());
    }

    private static Rings ringsOf(dev.treen.model.Rings rings) {
        Optional<Rings.Word> word = Rings.Word.of(rings.word());
        return word.isPresent() ? word.get() : new Rings.Angle(rings.degrees());
    }

    /** The moisture of each month, January first; empty where the air is given as a range. */
    public List<Double> months() {
        return climate instanceof Climate.Months months
                ? months.byMonth().stream().map(emc -> emc.percentOr(seasons.bench())).toList()
                : List.of();
    }

    /** The moisture that the wood has on average: the mean of the months, or the middle of a range. */
    public double usualMoisture() {
        return months().stream()
                .mapToDouble(month -> month)
                .average()
                .orElse((seasons.wet() + seasons.dry()) / 2);
    }

    /** Whether it is a manufactured sheet, which hardly moves. */
    public boolean still() {
        return sheet.isPresent();
    }

    /** The coefficient of a measure across the grain: 1 the width, 2 the thickness. */
    public Coefficient coefficient(int measure) {
        return measure == 2 ? through : across;
    }

    /** How much a measure of {@code mm} grows from the bench to the wettest; never negative. */
    public double swelling(int measure, double mm) {
        if (measure == 0) {
            return 0;
        }
        return sheet.map(s -> sheetMoves(s, mm))
                .orElseGet(() -> Movement.swelling(mm, coefficient(measure), seasons).changeMm());
    }

    /** How much a measure of {@code mm} loses from the bench to the driest; never negative. */
    public double shrinking(int measure, double mm) {
        if (measure == 0) {
            return 0;
        }
        return sheet.map(s -> sheetMoves(s, mm))
                .orElseGet(() -> -Movement.shrinking(mm, coefficient(measure), seasons).changeMm());
    }

    private double sheetMoves(SheetGood good, double mm) {
        return good.isExempt(mm, Figures.standard()) ? 0 : good.growth(mm, humiditySwing);
    }
}

package dev.treen.joinery;

import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.wood.Climate;
import dev.treen.wood.Coefficient;
import dev.treen.wood.Coefficients;
import dev.treen.wood.Direction;
import dev.treen.wood.Emc;
import dev.treen.wood.Figures;
import dev.treen.wood.Rings;
import dev.treen.wood.Seasons;
import dev.treen.wood.Species;
import dev.treen.wood.SpeciesTable;
import java.util.Locale;
import java.util.Optional;

/**
 * How the wood of one part moves through the year in this project's room.
 *
 * @param across the coefficient of its width
 * @param seasons its moisture at the bench and at the extremes
 * @param wood the species in words
 * @param still whether it is a manufactured sheet, which hardly moves
 */
public record Nature(Coefficient across, Seasons seasons, String wood, boolean still) {
    /** Moisture at the bench where the project is silent: most of the USA indoors, Wood Handbook ch. 13. */
    public static final double USUAL_MOISTURE = 8;

    private static final Climate.Range USUAL_ROOM = new Climate.Range(30, 60, 18, 24);

    /** How {@code part} moves, with the usual values where the project is silent. */
    public static Nature of(Part part, Settings settings) {
        Figures figures = Figures.standard();
        Optional<Board> board = part.from();
        Optional<Species> species = board.flatMap(Board::species).flatMap(id -> SpeciesTable.published().get(id));
        Coefficients coefficients = species.map(s -> s.coefficientsOrUnknown(figures))
                .orElseGet(() -> Coefficients.ofUnknownSpecies(figures));
        Rings rings = ringsOf(part.rings());
        Climate climate = settings.climate()
                .<Climate>map(c -> new Climate.Range(c.humidityLow(), c.humidityHigh(), c.coldest(), c.warmest()))
                .orElse(USUAL_ROOM);
        double bench = board.flatMap(Board::moisture).orElse(USUAL_MOISTURE);
        Seasons seasons = new Seasons(bench, percent(climate.wettest(), bench), percent(climate.driest(), bench));
        String wood = part.rings().word() + (part.rings().assumed() ? "-sawn (assumed) " : "-sawn ")
                + species.map(s -> s.commonName().toLowerCase(Locale.ROOT)).orElse("wood of no named species");
        return new Nature(
                Coefficient.of(coefficients, rings, Direction.WIDTH, figures),
                seasons,
                wood,
                board.map(Board::sheet).orElse(false));
    }

    private static Rings ringsOf(dev.treen.model.Rings rings) {
        Optional<Rings.Word> word = Rings.Word.of(rings.word());
        return word.isPresent() ? word.get() : new Rings.Angle(rings.degrees());
    }

    private static double percent(Emc emc, double otherwise) {
        return switch (emc) {
            case Emc.Moisture moisture -> moisture.percent();
            case Emc.OutOfRange range -> otherwise;
        };
    }

    /** Change of {@code widthMm} per millimetre from the bench to the wettest; 0 for a sheet. */
    public double swelling() {
        return still ? 0 : across.perPercent() * (seasons.wettest() - seasons.bench());
    }

    /** Change of a width per millimetre from the bench to the driest, as a positive number; 0 for a sheet. */
    public double shrinking() {
        return still ? 0 : across.perPercent() * (seasons.bench() - seasons.driest());
    }
}

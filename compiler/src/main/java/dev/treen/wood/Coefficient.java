package dev.treen.wood;

/**
 * How much one size of one board moves, and how that came about.
 *
 * @param perPercent fractional change of the size per 1 % of moisture content
 * @param direction which size
 * @param ringDegrees angle of the rings to the wide face
 * @param from the two coefficients of the species it was turned from
 * @param citation where the number comes from: the species' pair, or the figure for length
 */
public record Coefficient(
        double perPercent, Direction direction, double ringDegrees, Coefficients from, Citation citation) {

    /**
     * The coefficient of a size in a board whose rings lie so (rule M-03). Strain is a tensor with principal
     * values along and across the rings; turned through the angle θ it gives
     * {@code C_T cos²θ + C_R sin²θ} for the width and the opposite for the thickness: a quartered board moves
     * tangentially in its thickness.
     */
    public static Coefficient of(Coefficients species, Rings rings, Direction direction, Figures figures) {
        double degrees = rings.degrees(figures);
        double sin = Math.sin(Math.toRadians(degrees));
        double turned = sin * sin;
        double tangential = species.tangential();
        double radial = species.radial();
        return switch (direction) {
            case WIDTH ->
                new Coefficient(
                        tangential + (radial - tangential) * turned,
                        direction,
                        degrees,
                        species,
                        species.citation());
            case THICKNESS ->
                new Coefficient(
                        radial + (tangential - radial) * turned, direction, degrees, species, species.citation());
            case LENGTH -> {
                Figure along = figures.get("movement.along-grain");
                yield new Coefficient(along.value(), direction, degrees, species, along.citation());
            }
        };
    }

    /** A coefficient across the grain given as it is, whatever the rings. */
    public static Coefficient given(double perPercent, Citation citation) {
        Coefficients alike = new Coefficients(
                perPercent, perPercent, Figures.standard().value("movement.fibre-saturation"), citation);
        return new Coefficient(perPercent, Direction.WIDTH, 0, alike, citation);
    }
}

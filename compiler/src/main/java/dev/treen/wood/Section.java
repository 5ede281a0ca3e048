package dev.treen.wood;

import java.util.List;

/**
 * The cross-section of something that bends: rectangles one above, beside or behind the other, which act as one.
 *
 * @param pieces at least one
 */
public record Section(List<Piece> pieces) {

    /**
     * One rectangle.
     *
     * @param widthMm across the load
     * @param heightMm along the load
     * @param centreMm height of its middle above any common level
     * @param modulusMpa its stiffness along the span
     */
    public record Piece(double widthMm, double heightMm, double centreMm, double modulusMpa) {
        double areaMm2() {
            return widthMm * heightMm;
        }

        double ownMomentMm4() {
            return widthMm * heightMm * heightMm * heightMm / 12;
        }
    }

    /**
     * @throws IllegalArgumentException if there is no piece
     */
    public Section {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("a section needs a piece");
        }
    }

    /** A plain board lying flat. */
    public static Section board(double widthMm, double thicknessMm, double modulusMpa) {
        return new Section(List.of(new Piece(widthMm, thicknessMm, thicknessMm / 2, modulusMpa)));
    }

    /** A board with a lipping on edge fixed under its front, its top against the board's underside (S-03). */
    public static Section lipped(Piece board, double lippingMm, double lippingHeightMm, double lippingModulusMpa) {
        double centre = board.centreMm() - board.heightMm() / 2 - lippingHeightMm / 2;
        return new Section(List.of(board, new Piece(lippingMm, lippingHeightMm, centre, lippingModulusMpa)));
    }

    /**
     * Stiffness in bending, E·I in N·mm²: parallel axes about the common neutral line,
     * {@code Σ E_k·(I_k + A_k·y_k²)} (textbook).
     */
    public double stiffness() {
        double weight = 0;
        double moment = 0;
        for (Piece piece : pieces) {
            weight += piece.modulusMpa() * piece.areaMm2();
            moment += piece.modulusMpa() * piece.areaMm2() * piece.centreMm();
        }
        double neutral = moment / weight;
        double stiffness = 0;
        for (Piece piece : pieces) {
            double y = piece.centreMm() - neutral;
            stiffness += piece.modulusMpa() * (piece.ownMomentMm4() + piece.areaMm2() * y * y);
        }
        return stiffness;
    }

    /** Stiffness against shear by the handbook's effective area, 5/6 of the section, at a ratio E/G; in N. */
    double shearStiffness(double modulusOverShear) {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += piece.modulusMpa() * piece.areaMm2();
        }
        return sum * 5 / 6 / modulusOverShear;
    }
}

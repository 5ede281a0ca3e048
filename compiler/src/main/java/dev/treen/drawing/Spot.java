package dev.treen.drawing;

/** A place on a sheet in millimetres, x to the right and y down. */
public record Spot(double x, double y) {
    Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    double to(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}

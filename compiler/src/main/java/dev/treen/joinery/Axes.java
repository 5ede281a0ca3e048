package dev.treen.joinery;

import dev.treen.solid.Axis;

/** Between the axes of solids and the numbers that places use: 0 for x, 1 for y, 2 for z. */
final class Axes {
    private Axes() {
    }

    static int number(Axis axis) {
        return switch (axis) {
            case X -> 0;
            case Y -> 1;
            case Z -> 2;
        };
    }

    static Axis of(int number) {
        return number == 0 ? Axis.X : number == 1 ? Axis.Y : Axis.Z;
    }
}

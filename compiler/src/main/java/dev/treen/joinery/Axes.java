package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Between the axes of solids and the numbers that places use: 0 for x, 1 for y, 2 for z. */
public final class Axes {
    private Axes() {
    }

    /** The number of an axis. */
    public static int number(Axis axis) {
        return switch (axis) {
            case X -> 0;
            case Y -> 1;
            case Z -> 2;
        };
    }

    /** The axis of a number. */
    public static Axis of(int number) {
        return number == 0 ? Axis.X : number == 1 ? Axis.Y : Axis.Z;
    }

    /** How far a box reaches, in words: across, deep, high. */
    public static String sides(Box box, LengthFormat format) {
        return Arrays.stream(Axis.values())
                .map(axis -> format.text(Length.ofMm(box.extent(axis))))
                .collect(Collectors.joining(" by "));
    }
}

package dev.treen.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The six directions of an assembly as its maker stands before it: x to the right, y to the back, z up. */
public enum Direction {
    RIGHT(0, 1, "right"),
    LEFT(0, -1, "left"),
    BACK(1, 1, "back"),
    FRONT(1, -1, "front"),
    UP(2, 1, "top"),
    DOWN(2, -1,
            "bottom");

    private final int axis;
    private final int sign;
    private final String surface;

    Direction(int axis, int sign, String surface) {
        this.axis = axis;
        this.sign = sign;
        this.surface = surface;
    }

    /** 0 for x, 1 for y, 2 for z. */
    public int axis() {
        return axis;
    }

    /** 1 along the axis, -1 against it. */
    public int sign() {
        return sign;
    }

    /** What a part's surface on this side is called: left, right, front, back, top, bottom. */
    public String surface() {
        return surface;
    }

    /** The word that a project writes: right, left, back, front, up, down. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The words of all. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Direction::word).toList();
    }

    /** The direction of {@code axis} with {@code sign}. */
    public static Direction of(int axis, int sign) {
        return Arrays.stream(values())
                .filter(d -> d.axis == axis && d.sign == sign)
                .findFirst()
                .orElseThrow();
    }

    /** The direction that {@code word} or the name of a surface means. */
    public static Optional<Direction> named(String word) {
        return Arrays.stream(values())
                .filter(d -> d.word().equals(word) || d.surface.equals(word))
                .findFirst();
    }

    /** The other way. */
    public Direction opposite() {
        return of(axis, -sign);
    }
}

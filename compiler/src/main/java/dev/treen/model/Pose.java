package dev.treen.model;

import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * How an instance stands in what holds it: which way its right, its back and its top point there, and where its origin
 * lies. Only quarter turns, so sizes stay exact.
 */
record Pose(Direction right, Direction back, Direction up, List<Length> at) {
    /** Not turned, not moved. */
    static final Pose PLAIN = new Pose(
            Direction.RIGHT, Direction.BACK, Direction.UP, List.of(Length.ZERO, Length.ZERO, Length.ZERO));

    /** With its front turned to {@code side} and its origin at {@code at}. */
    static Pose facing(Direction side, List<Length> at) {
        return switch (side) {
            case FRONT -> new Pose(Direction.RIGHT, Direction.BACK, Direction.UP, at);
            case RIGHT -> new Pose(Direction.BACK, Direction.LEFT, Direction.UP, at);
            case BACK -> new Pose(Direction.LEFT, Direction.FRONT, Direction.UP, at);
            case LEFT -> new Pose(Direction.FRONT, Direction.RIGHT, Direction.UP, at);
            // Laid on its back, or on its face; its right stays where it is.
            case UP -> new Pose(Direction.RIGHT, Direction.DOWN, Direction.BACK, at);
            case DOWN -> new Pose(Direction.RIGHT, Direction.UP, Direction.FRONT, at);
        };
    }

    private Direction axis(int number) {
        return number == 0 ? right : number == 1 ? back : up;
    }

    Direction turned(Direction direction) {
        Direction axis = axis(direction.axis());
        return direction.sign() > 0 ? axis : axis.opposite();
    }

    private List<Length> turned(List<Length> point) {
        List<Length> turned = new ArrayList<>(List.of(Length.ZERO, Length.ZERO, Length.ZERO));
        for (int i = 0; i < 3; i++) {
            Direction to = axis(i);
            turned.set(to.axis(), to.sign() > 0 ? point.get(i) : point.get(i).negate());
        }
        return turned;
    }

    private List<Length> moved(List<Length> point) {
        List<Length> turned = turned(point);
        return List.of(
                at.get(0).plus(turned.get(0)), at.get(1).plus(turned.get(1)), at.get(2).plus(turned.get(2)));
    }

    /** This pose, of something that stands in a thing of pose {@code outer}. */
    Pose in(Pose outer) {
        return new Pose(outer.turned(right), outer.turned(back), outer.turned(up), outer.moved(at));
    }

    /** Where a part lies outside that lies at {@code placing} inside. */
    Placing place(Placing placing) {
        if (equals(PLAIN)) {
            return placing;
        }
        boolean[] high = new boolean[3];
        for (int i = 0; i < 3; i++) {
            Direction to = axis(i);
            high[to.axis()] = placing.corner().high(i) != to.sign() < 0;
        }
        Direction length = turned(placing.length());
        Direction width = turned(placing.width());
        return new Placing(
                length,
                width,
                Direction.of(3 - length.axis() - width.axis(), 1),
                moved(placing.at()),
                new Placing.Corner(high[0], high[1], high[2]),
                placing.span(),
                List.of());
    }
}

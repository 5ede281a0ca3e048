package dev.treen.check;

import dev.treen.model.Holding.Content;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether things go into a room: each kind stands as one block of rows and layers, the blocks side by side. Things may be
 * turned round but are not laid on their side. What it finds fits; it does not look at every way to stand things.
 */
final class Packing {
    private static final int MOST_STEPS = 100_000;

    private final List<Length> inside;
    private final Length room;
    private int steps;

    private Packing(List<Length> inside, Length room) {
        this.inside = inside;
        this.room = room;
    }

    private record Space(Length along, Length across) {}

    private record Block(Length along, Length across) {}

    /** Whether {@code contents} go into {@code inside} with {@code room} free on every side of each block. */
    static boolean fits(List<Content> contents, List<Length> inside, Length room) {
        Packing packing = new Packing(inside, room);
        return packing.fits(contents, List.of(new Space(inside.get(0), inside.get(1))));
    }

    private boolean fits(List<Content> left, List<Space> spaces) {
        if (left.isEmpty()) {
            return true;
        }
        for (int i = 0; i < left.size(); i++) {
            List<Content> others = new ArrayList<>(left);
            Content next = others.remove(i);
            for (Block block : blocks(next)) {
                for (int s = 0; s < spaces.size(); s++) {
                    if (++steps > MOST_STEPS) {
                        return false;
                    }
                    Space space = spaces.get(s);
                    if (block.along().compareTo(space.along()) <= 0 && block.across().compareTo(space.across()) <= 0) {
                        List<Space> rest = new ArrayList<>(spaces);
                        rest.remove(s);
                        if (fits(others, with(rest, space.along(), space.across().minus(block.across()),
                                space.along().minus(block.along()), block.across()))
                                || fits(others, with(rest, space.along().minus(block.along()), space.across(),
                                        block.along(), space.across().minus(block.across())))) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    private static List<Space> with(List<Space> rest, Length a, Length b, Length c, Length d) {
        List<Space> all = new ArrayList<>(rest);
        all.add(new Space(a, b));
        all.add(new Space(c, d));
        return all;
    }

    /** The footprints, free room included, in which all things of a kind can stand. */
    private List<Block> blocks(Content content) {
        Length free = room.times(2);
        int layers = 0;
        while (layers < content.count()
                && content.height().times(layers + 1L).plus(free).compareTo(inside.get(2)) <= 0) {
            layers++;
        }
        List<Block> blocks = new ArrayList<>();
        if (layers == 0) {
            return blocks;
        }
        int standing = (content.count() + layers - 1) / layers;
        for (int rows = 1; rows <= standing; rows++) {
            int columns = (standing + rows - 1) / rows;
            blocks.add(new Block(
                    content.length().times(columns).plus(free), content.width().times(rows).plus(free)));
            blocks.add(new Block(
                    content.width().times(columns).plus(free), content.length().times(rows).plus(free)));
        }
        return blocks;
    }
}

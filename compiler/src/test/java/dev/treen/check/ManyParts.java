package dev.treen.check;

import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.model.Project;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import java.util.Random;

/**
 * Projects of as many parts as a measurement wants: boxes side by side, a carcase of shelves, or a store of things of many
 * kinds and sizes. All are made up.
 */
final class ManyParts {
    /** How many parts each kind of thing in the store has. */
    private static final int EACH = 5;

    /** How far apart things stand in the store. */
    private static final int APART = 700;

    private ManyParts() {
    }

    static Project project(String text) {
        SourceFile file = new SourceFile("many.treen", """
                project "Many parts" { climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 9000 x 400 x 27; rings flat; moisture 9% }
                """ + text);
        return Evaluator.evaluate(Parser.parse(file), FileLoader.NONE, JointKinds.schemas()).project();
    }

    static String boxes(int boxes) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < boxes; i++) {
            text.append("""
                    part front%1$d { length 160; width 84; thickness 9; from plank; place { length right; width up; at %2$d, -9, 0 } }
                    part back%1$d like front%1$d { place { at %2$d, 80, 0 } }
                    part left%1$d { length 80; width 84; thickness 9; from plank; place { length back; width up; at %2$d - 9, 0, 0 } }
                    part right%1$d like left%1$d { place { at %2$d + 160, 0, 0 } }
                    part base%1$d { length 160; width 80; thickness 7; from plank; place { length right; width back; at %2$d, 0, 5 } }
                    joint mitre front%1$d to left%1$d, left%1$d to back%1$d, back%1$d to right%1$d, right%1$d to front%1$d
                    joint groove base%1$d into front%1$d, back%1$d, left%1$d, right%1$d { wide 5; deep 4; gap auto }
                    """.formatted(i, 200 * i));
        }
        return text.toString();
    }

    static String carcase(int shelves) {
        StringBuilder text = new StringBuilder("""
                part left  { length %1$d; width 200; thickness 18; from plank; place { length up; width back; at -18, 0, 0 } }
                part right like left { place { at 600, 0, 0 } }
                """.formatted(60 * shelves + 60));
        for (int i = 0; i < shelves; i++) {
            text.append("""
                    part shelf%1$d { length 600; width 200; thickness 16; from plank; place { length right; width back; at 0, 0, %2$d } }
                    joint housing shelf%1$d into left, right { deep 5 }
                    """.formatted(i, 60 * i + 30));
        }
        return text.toString();
    }

    /** Things of five parts, no two alike, on a square floor: a drawer, a door, a shelf, a box, a trivet, a top, in turn. */
    static String store(int parts) {
        Random random = new Random(7);
        int things = Math.max(1, parts / EACH);
        int aRow = (int) Math.ceil(Math.sqrt(things));
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < things; i++) {
            text.append(thing(i % 6, random)
                    .replace("#", "_" + i)
                    .replace("@x", String.valueOf(APART * (i % aRow)))
                    .replace("@y", String.valueOf(APART * (i / aRow))));
        }
        return text.toString();
    }

    private static String thing(int kind, Random random) {
        return switch (kind) {
            case 0 -> drawer(random);
            case 1 -> door(random);
            case 2 -> shelf(random);
            case 3 -> box(random);
            case 4 -> trivet(random);
            default -> top(random);
        };
    }

    private static int between(Random random, int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    private static String part(String name, int length, int width, int thickness, String way, int x, int y, int z) {
        return "part %s# { length %d; width %d; thickness %d; from plank; place { %s; at @x + %d, @y + %d, %d } }%n"
                .formatted(name, length, width, thickness, way, x, y, z);
    }

    private static String walls(int across, int deep, int high, int thick, int behind) {
        String right = "length right; width up";
        String back = "length back; width up";
        return part("front", across, high, thick, right, 0, -thick, 0)
                + part("back", across, high, behind, right, 0, deep, 0)
                + part("left", deep, high, thick, back, -thick, 0, 0)
                + part("right", deep, high, thick, back, across, 0, 0);
    }

    private static String drawer(Random random) {
        int across = between(random, 160, 400);
        int deep = between(random, 160, 300);
        return walls(across, deep, between(random, 80, 130), 12, 12)
                + part("base", across, deep, 6, "length right; width back", 0, 0, 10)
                + """
                        joint dovetail left# to front#, right# to front# { cut lapped; lap 4 }
                        joint dovetail left# to back#, right# to back#
                        joint groove base# into front#, back#, left#, right# { wide 6; deep 5; gap auto; stop auto }
                        """;
    }

    private static String door(Random random) {
        int across = between(random, 200, 330);
        int high = between(random, 300, 600);
        String up = "length up; width right";
        return part("stile", high, 50, 20, up, -50, 0, 0)
                + part("post", high, 50, 20, up, across, 0, 0)
                + part("rail", across, 50, 20, "length right; width up", 0, 0, 0)
                + part("lintel", across, 60, 20, "length right; width up", 0, 0, high - 60)
                + part("panel", high - 110, across, 6, up, 0, 7, 50)
                + """
                        joint mortise_tenon rail# into stile#, post#, lintel# into stile#, post#
                        joint groove panel# into stile#, post#, rail#, lintel# { wide 6; deep 8; gap 2 }
                        """;
    }

    private static String shelf(Random random) {
        int across = between(random, 300, 500);
        int high = between(random, 350, 600);
        String right = "length right; width back";
        return part("left", high, 120, 18, "length up; width back", -18, 0, 0)
                + part("right", high, 120, 18, "length up; width back", across, 0, 0)
                + part("low", across, 120, 14, right, 0, 0, between(random, 30, 90))
                + part("middle", across, 120, 14, right, 0, 0, between(random, 130, 200))
                + part("high", across, 120, 14, right, 0, 0, between(random, 250, 310))
                + """
                        joint housing low# into left#, right# { deep 5; stop 10 from front }
                        joint housing middle# into left#, right# { deep 5 }
                        joint sliding_dovetail high# into left#, right# { stop 10 from front }
                        """;
    }

    private static String box(Random random) {
        int across = between(random, 120, 220);
        int deep = between(random, 90, 150);
        String corners = random.nextBoolean() ? "spline" : "finger";
        return walls(across, deep, between(random, 60, 110), 10, 10)
                + part("base", across, deep, 6, "length right; width back", 0, 0, 8)
                + "joint " + corners + " front# to left#, left# to back#, back# to right#, right# to front#\n"
                + "joint groove base# into front#, back#, left#, right# { wide 6; deep 5; gap auto; stop auto }\n";
    }

    private static String trivet(Random random) {
        int across = between(random, 180, 320);
        int deep = between(random, 140, 240);
        String right = "length right; width back";
        String back = "length back; width right";
        return part("front", across, 24, 16, right, 0, -24, 0)
                + part("rear", across, 24, 16, right, 0, deep, 0)
                + part("left", deep, 24, 16, back, -24, 0, 0)
                + part("right", deep, 24, 16, back, across, 0, 0)
                + part("bar", across, 24, 16, right, 0, between(random, 40, deep - 70), 0)
                + "joint halving front# to left#, front# to right#, rear# to left#, rear# to right#\n"
                + "joint halving bar# to left#, bar# to right#\n";
    }

    private static String top(Random random) {
        int across = between(random, 350, 600);
        int wide = between(random, 70, 100);
        String right = "length right; width back";
        return part("one", across, wide, 16, right, 0, 0, 0)
                + part("two", across, wide, 16, right, 0, wide, 0)
                + part("three", across, wide, 16, right, 0, 2 * wide, 0)
                + part("four", across, wide, 16, right, 0, 3 * wide, 0)
                + part("five", across, wide, 16, right, 0, 4 * wide, 0)
                + "joint tongue_groove one# into two#, two# into three#\n"
                + "joint edge three# to four#, four# to five#\n";
    }
}

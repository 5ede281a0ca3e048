package dev.treen.drawing;

import dev.treen.solid.Drawing;
import dev.treen.solid.Fill;
import dev.treen.solid.Stroke;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * An assembly drawn once, from which many small pictures are made in which single parts stand out: these are shaded, in
 * heavy lines and named, and what is cut into them is black; all else is a thin outline. So they tell what they mean
 * without colour.
 */
public final class Scene {
    private static final Bounds ROOM = new Bounds(0, 0, 96, 64);
    /** Marks are one or two letters. */
    private static final double FOR_NAMES = 10;
    private static final double ASIDE = 3;
    private static final int MOST_NAMES = 16;
    /** Of the thin outlines so many of the longest: every picture has them, and of hundreds of parts most are mere dots. */
    private static final int MOST_OUTLINES = 2_000;
    private static final String FAINT = "#757575";
    private static final String CUT = "#2b2b2b";

    private final Pictorial pictorial;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final Map<String, List<Fill>> faces = new LinkedHashMap<>();
    private final Map<String, List<Stroke>> edges = new LinkedHashMap<>();
    private final Map<String, Spot> anchors;
    private final Bounds picture;

    Scene(Drawing drawing) {
        pictorial = new Pictorial(drawing, ROOM, FOR_NAMES);
        for (Fill fill : drawing.fills()) {
            faces.computeIfAbsent(fill.part(), p -> new ArrayList<>()).add(fill);
        }
        for (Stroke stroke : drawing.visible()) {
            edges.computeIfAbsent(stroke.part(), p -> new ArrayList<>()).add(stroke);
        }
        faces.keySet().forEach(part -> numbers.putIfAbsent(part, numbers.size() + 1));
        edges.keySet().forEach(part -> numbers.putIfAbsent(part, numbers.size() + 1));
        anchors = pictorial.anchors();
        picture = Mark.bounds(drawing.visible().stream()
                .<Mark>map(s -> new Mark.Line(pictorial.spot(s.from()), pictorial.spot(s.to()), Pen.SEEN))
                .toList());
    }

    /** Whether {@code part} is seen. */
    public boolean shows(String part) {
        return faces.containsKey(part);
    }

    /** What all pictures draw on, for one place in a document; {@code prefix} keeps its names apart from others. */
    public String definitions(String prefix) {
        Svg svg = new Svg();
        svg.open("defs");
        svg.path(path(outlines()), "id", prefix + "-all", "fill", "none", "stroke", FAINT, "stroke-width", "0.18",
                "stroke-linecap", "round");
        numbers.forEach((part, number) -> {
            svg.open("g", "id", prefix + "-" + number);
            for (Fill fill : faces.getOrDefault(part, List.of())) {
                svg.path(outline(fill), "fill", Sheet.grey(shade(fill)), "fill-rule", "evenodd");
            }
            svg.path(path(edges.getOrDefault(part, List.of())), "fill", "none", "stroke", "#000000", "stroke-width",
                    "0.4", "stroke-linecap", "round");
            svg.close();
        });
        svg.close();
        return svg.hidden();
    }

    /** The edges of all parts, in their order; of very many the longest. */
    private List<Stroke> outlines() {
        List<Stroke> all = edges.values().stream().flatMap(List::stream).toList();
        if (all.size() <= MOST_OUTLINES) {
            return all;
        }
        double[] lengths = all.stream().mapToDouble(this::length).toArray();
        double least = DoubleStream.of(lengths).sorted().skip((long) all.size() - MOST_OUTLINES).findFirst().orElse(0);
        return IntStream.range(0, lengths.length)
                .filter(i -> lengths[i] >= least)
                .limit(MOST_OUTLINES)
                .mapToObj(all::get)
                .toList();
    }

    private double length(Stroke stroke) {
        Spot from = pictorial.spot(stroke.from());
        Spot to = pictorial.spot(stroke.to());
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    /**
     * A picture in which {@code parts} stand out.
     *
     * @param prefix as in {@link #definitions}
     * @param cuts names of the joints whose cuts are made now
     * @param title for those who hear the picture
     * @param mark what stands beside a part; short, for pictures are small
     */
    public String picture(String prefix, Collection<String> parts, Collection<String> cuts, String title,
            UnaryOperator<String> mark) {
        List<Mark> names = new ArrayList<>();
        Map<String, Spot> named = new LinkedHashMap<>();
        anchors.forEach((part, spot) -> {
            if (parts.contains(part) && named.size() < MOST_NAMES) {
                named.put(part, spot);
            }
        });
        Pictorial.name(named, picture, ROOM, ASIDE, mark, names);
        Bounds high = names.isEmpty() ? picture : picture.join(Mark.bounds(names));
        // All pictures are equally wide, so that a part is equally large in each.
        Bounds bounds = new Bounds(ROOM.left(), high.top() - 1, ROOM.right(), high.bottom() + 1);
        Svg svg = new Svg();
        svg.open("g", "transform", "translate(" + Svg.number(-bounds.left()) + " " + Svg.number(-bounds.top()) + ")");
        svg.use(prefix + "-all");
        numbers.forEach((part, number) -> {
            if (parts.contains(part)) {
                svg.use(prefix + "-" + number);
                for (Fill fill : faces.getOrDefault(part, List.of())) {
                    if (cuts.contains(fill.face().origin().name())) {
                        svg.path(outline(fill), "fill", CUT, "fill-rule", "evenodd");
                    }
                }
            }
        });
        Sheet.draw(svg, names);
        svg.close();
        List<String> seen = numbers.keySet().stream().filter(parts::contains).toList();
        String words = (seen.size() < numbers.size() ? "Standing out: " : "All parts: ") + String.join(", ", seen)
                + ".";
        return svg.printed(bounds.width(), bounds.height(), title, words);
    }

    private static int shade(Fill fill) {
        return Pictorial.grey(fill.face().plane().normal()) - 22;
    }

    private String outline(Fill fill) {
        return Sheet.path(new Mark.Area(
                fill.outlines().stream().map(o -> o.stream().map(pictorial::spot).toList()).toList(), 0));
    }

    private String path(List<Stroke> strokes) {
        StringBuilder d = new StringBuilder();
        for (Stroke stroke : strokes) {
            d.append(at('M', pictorial.spot(stroke.from()))).append(at('L', pictorial.spot(stroke.to())));
        }
        return d.toString();
    }

    private static String at(char move, Spot spot) {
        return move + Svg.number(spot.x()) + " " + Svg.number(spot.y());
    }
}

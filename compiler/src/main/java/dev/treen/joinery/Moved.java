package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.model.Direction;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Vec3;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** How far and which way the left part of a joint has to go until its surface lies against the right one. */
final class Moved {
    private static final Pattern FIGURE = Pattern.compile("-?[0-9][0-9./]*( ?(mm|cm|in))?");

    /** How many moves are tried before it is left to the maker. */
    private static final int MOST_MOVES = 60;

    private final Meeting meeting;
    private final Settings settings;

    Moved(Meeting meeting, Settings settings) {
        this.meeting = meeting;
        this.settings = settings;
    }

    /** What closes the gap between parts that lie apart along one axis; along several there is no one way. */
    List<Remedy> together(BoxContact.Apart apart) {
        List<Axis> axes = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            if (apart.gaps().get(axis).signum() != 0) {
                axes.add(axis);
            }
        }
        if (axes.size() != 1) {
            return List.of();
        }
        Axis axis = axes.getFirst();
        Length gap = Length.ofMm(apart.gaps().get(axis));
        boolean up = low(meeting.left().box(), axis).compareTo(low(meeting.right().box(), axis)) < 0;
        return remedies(axis, up ? gap : gap.negate(), "longer", "wider");
    }

    /** What takes a part out of the other the shortest way. */
    List<Remedy> outOf() {
        Box left = meeting.left().box();
        Box right = meeting.right().box();
        List<Length> ways = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            Length up = high(right, axis).minus(low(left, axis));
            Length down = high(left, axis).minus(low(right, axis));
            ways.add(up.compareTo(down) < 0 ? up : down.negate());
        }
        int best = List.of(0, 1, 2).stream().min(Comparator.comparing(axis -> ways.get(axis).abs())).orElseThrow();
        long least = ways.stream().filter(way -> way.abs().equals(ways.get(best).abs())).count();
        return least > 1 ? List.of() : remedies(Axes.of(best), ways.get(best), "shorter", "narrower");
    }

    /**
     * The shortest move of the left part after which this joint can be made: as it lies, but flush with a side of the
     * other part, or past it. Empty where no move helps and one of them has to be turned.
     */
    Optional<Remedy> toMake(JointKind kind, Surroundings surroundings) {
        return moves().stream()
                .filter(move -> makes(kind, move, surroundings))
                .findFirst()
                .map(move -> remedy(move));
    }

    /** All moves that bring sides into one plane: those along fewest axes first, and of these the shortest. */
    private List<Vec3> moves() {
        List<Vec3> moves = List.of(Vec3.ZERO);
        for (Axis axis : Axis.values()) {
            List<Vec3> more = new ArrayList<>();
            for (Vec3 move : moves) {
                steps(axis).forEach(step -> more.add(move.plus(Vec3.along(axis, step.mm()))));
            }
            moves = more;
        }
        return moves.stream()
                .filter(move -> !move.equals(Vec3.ZERO))
                .sorted(Comparator.comparingInt(Moved::axes).thenComparing(Moved::distance))
                .limit(MOST_MOVES)
                .toList();
    }

    private NavigableSet<Length> steps(Axis axis) {
        Box left = meeting.left().box();
        Box right = meeting.right().box();
        NavigableSet<Length> steps = new TreeSet<>(List.of(Length.ZERO));
        for (Length side : List.of(low(right, axis), high(right, axis))) {
            steps.add(side.minus(low(left, axis)));
            steps.add(side.minus(high(left, axis)));
        }
        return steps;
    }

    private static int axes(Vec3 move) {
        int axes = 0;
        for (Axis axis : Axis.values()) {
            axes += move.get(axis).signum() == 0 ? 0 : 1;
        }
        return axes;
    }

    private static Length distance(Vec3 move) {
        Length sum = Length.ZERO;
        for (Axis axis : Axis.values()) {
            sum = sum.plus(Length.ofMm(move.get(axis)).abs());
        }
        return sum;
    }

    private boolean makes(JointKind kind, Vec3 move, Surroundings surroundings) {
        Box left = Box.at(meeting.left().box().min().plus(move), size(meeting.left().box()));
        BoxContact contact = left.contact(meeting.right().box());
        boolean touches = switch (contact) {
            case BoxContact.FaceToFace _,BoxContact.Edge _ -> true;
            case BoxContact.Overlapping _ -> kind.crosses();
            case BoxContact.Corner _,BoxContact.Apart _ -> false;
        };
        if (!touches) {
            return false;
        }
        Effect effect = kind.make(
                new Meeting(
                        meeting.joint(),
                        new Meeting.Placed(meeting.left().part(), meeting.left().placing(), left),
                        meeting.right(),
                        contact),
                surroundings);
        return effect.isMade()
                && effect.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
    }

    private static Vec3 size(Box box) {
        return box.max().minus(box.min());
    }

    private Remedy remedy(Vec3 move) {
        List<String> ways = new ArrayList<>();
        List<Edit> edits = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            Length by = Length.ofMm(move.get(axis));
            if (!by.isZero()) {
                ways.add(settings.format().text(by.abs()) + " " + way(axis, by.signum()));
                edits.addAll(List.of(edit(axis, by)));
            }
        }
        return Remedy.choice(
                "move `" + meeting.left().part().name() + "` " + String.join(" and ", ways)
                        + ": there this joint can be made",
                edits.size() == ways.size() ? edits.toArray(new Edit[0]) : new Edit[0]);
    }

    private List<Remedy> remedies(Axis axis, Length by, String length, String width) {
        String name = meeting.left().part().name();
        String far = settings.format().text(by.abs());
        List<Remedy> remedies = new ArrayList<>();
        remedies.add(Remedy.choice("move `" + name + "` " + far + " " + way(axis, by.signum()), edit(axis, by)));
        int measure = meeting.left().measure(axis);
        if (measure < 2) {
            remedies.add(Remedy.choice("make `" + name + "` " + far + " " + (measure == 0 ? length : width)
                    + " at that end and leave the rest of it where it is"));
        }
        return remedies;
    }

    private static String way(Axis axis, int sign) {
        String word = Direction.of(Axes.number(axis), sign).word();
        return switch (axis) {
            case X -> "to the " + word;
            case Y -> sign < 0 ? "to the front" : "to the back";
            case Z -> word;
        };
    }

    /** The coordinate written anew, where it stands in the text of the joint and is that of this part alone. */
    private Edit[] edit(Axis axis, Length by) {
        List<Span> coordinates = meeting.left().placing().coordinates();
        String name = meeting.left().part().name();
        boolean own = coordinates.size() == 3 && !name.contains("[") && !name.contains(".")
                && coordinates.getFirst().file().equals(meeting.joint().at().file());
        if (!own) {
            return new Edit[0];
        }
        Span at = coordinates.get(Axes.number(axis));
        Length now = meeting.left().placing().at().get(Axes.number(axis));
        String text = FIGURE.matcher(at.text()).matches()
                ? settings.written(now.plus(by))
                : at.text() + (by.signum() < 0 ? " - " : " + ") + settings.written(by.abs());
        return new Edit[]{new Edit(at, text)};
    }

    private static Length low(Box box, Axis axis) {
        return Length.ofMm(box.min().get(axis));
    }

    private static Length high(Box box, Axis axis) {
        return Length.ofMm(box.max().get(axis));
    }
}

package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Setting;
import dev.treen.quantity.DecimalText;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The room of a panel, door or lid through the year, as it is shown: one curve, its two ends with the errors of making, and
 * what other wood or another room would ask for.
 *
 * @param part the part's name
 * @param writtenAt where the room is written, or where it could be
 * @param benchMm the room when it is made
 * @param points the room month by month, or from the driest to the dampest, made as drawn
 * @param makingMm what making may take or give at its worst
 * @param likelyMm what it takes or gives as a rule
 * @param largest the dimensions that count most, in words
 * @param tightest the least that may be left
 * @param loosest the most that there may be
 * @param needs the gap that other wood, other rings or another room would want
 */
public record RoomYear(
        String part,
        Span writtenAt,
        double benchMm,
        List<Point> points,
        double makingMm,
        double likelyMm,
        List<String> largest,
        End tightest,
        End loosest,
        List<Need> needs) {

    /** Keeps its own copies. */
    public RoomYear {
        points = List.copyOf(points);
        largest = List.copyOf(largest);
        needs = List.copyOf(needs);
    }

    /** The room at one time of the year. */
    public record Point(String when, double mm) {}

    /** One end of what the room may be: how large, when, and what does most to it. */
    public record End(double mm, String when, String cause) {}

    /** The gap that something else would want. */
    public record Need(String what, double gapMm) {}

    /** The years of the rooms of {@code among}, a whole project or a subassembly of it, that are written where it is wanted. */
    static List<RoomYear> of(Joined among, Joined joined, Predicate<Span> wanted) {
        Map<String, Clearance> tightest = new LinkedHashMap<>();
        for (Clearance room : Clearances.of(among)) {
            tightest.merge(room.of().part().name(), room,
                    (one, other) -> other.tightest().mm() < one.tightest().mm() ? other : one);
        }
        List<RoomYear> years = new ArrayList<>();
        tightest.values().stream()
                .filter(room -> wanted.test(writtenAt(room)))
                .forEach(room -> years.add(of(room, joined)));
        return years;
    }

    private static Span writtenAt(Clearance room) {
        Setting written = room.made().joint().settings().get("gap");
        return written == null ? room.at() : written.valueAt();
    }

    private static RoomYear of(Clearance room, Joined joined) {
        List<Point> points = Year.of(room.nature()).stream()
                .map(point -> new Point(point.name(), room.seasonMm(point.moisture())))
                .toList();
        List<String> largest = room.largest().stream()
                .limit(2)
                .map(each -> each.what() + " ± " + DecimalText.write(each.tolerance().mm(), 2) + " mm, "
                        + each.kind().words())
                .toList();
        Clearance.Extreme least = room.tightest();
        Clearance.Extreme most = room.loosest();
        return new RoomYear(
                room.of().part().name(),
                writtenAt(room),
                room.benchMm(),
                points,
                room.worstMm(),
                room.likelyMm(),
                largest,
                new End(least.mm(), least.when(), least.cause()),
                new End(most.mm(), most.when(), most.cause()),
                Needs.of(room, joined));
    }
}

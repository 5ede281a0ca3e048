package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Axes;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Direction;
import dev.treen.model.Settings;
import dev.treen.quantity.Exact;
import dev.treen.solid.Box;
import dev.treen.solid.Motion;
import dev.treen.solid.Neighbours;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A lid or a drawer is moved along its way by its own length, with all that is joined to it, past every other part. What
 * it strikes is told, and how far it came.
 */
final class SlidesOut implements BodyCheck {
    static final FindingKind STUCK = FindingKind.warning("cannot-slide-out",
            "A lid or drawer cannot come out along its way");

    private static final List<String> WAYS = List.of("slide", "runs");

    @Override
    public List<FindingKind> kinds() {
        return List.of(STUCK);
    }

    /** What stops it, and after how many millimetres. */
    private record Stop(String part, BigFraction after) {}

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        List<Finding> findings = new ArrayList<>();
        Set<String> done = new HashSet<>();
        if (joined.joints().stream().allMatch(made -> way(made).isEmpty())) {
            return findings;
        }
        Map<String, List<Placed>> groups = groups(joined.joints(), standing);
        Neighbours neighbours = new Neighbours(standing.all());
        for (MadeJoint made : joined.joints()) {
            String moving = made.joint().left().name();
            way(made).filter(side -> standing.solid(moving).isPresent() && done.add(moving + side))
                    .flatMap(side -> stop(made, side, groups.getOrDefault(moving,
                            List.of(new Placed(moving, standing.solid(moving).orElseThrow()))), neighbours)
                            .map(stop -> finding(made, stop, joined.project().settings())))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Side> way(MadeJoint made) {
        return WAYS.stream()
                .flatMap(word -> made.joint().word(word).stream())
                .flatMap(word -> Direction.named(word).stream())
                .map(way -> Side.of(Axes.of(way.axis()), way.sign()))
                .findFirst();
    }

    /** For each part those that are joined fast to it, itself among them; single parts are left out. */
    private static Map<String, List<Placed>> groups(List<MadeJoint> joints, Standing standing) {
        List<MadeJoint> fixed = joints.stream().filter(made -> way(made).isEmpty()).toList();
        Map<String, List<Placed>> groups = new HashMap<>();
        standing.joinedGroups(fixed).forEach(group -> group.forEach(part -> groups.put(part.name(), group)));
        return groups;
    }

    private static Optional<Stop> stop(MadeJoint made, Side side, List<Placed> moving, Neighbours neighbours) {
        Set<String> own = new HashSet<>(moving.stream().map(Placed::name).toList());
        // Where the lid is joined fast to what it slides in, it is not the lid's way that is wrong.
        if (own.contains(made.joint().right().name())) {
            return Optional.empty();
        }
        Box box = moving.stream()
                .flatMap(part -> part.solid().bounds().stream())
                .reduce(Box::join)
                .orElseThrow();
        BigFraction length = box.extent(side.axis());
        Box swept = box.join(box.translate(side.unit().times(length)));
        return neighbours.near(swept).stream()
                .filter(other -> !own.contains(other.name()))
                .flatMap(other -> moving.stream().flatMap(part -> met(part, other, side, length)))
                .min((a, b) -> Exact.compare(a.after(), b.after()));
    }

    private static Stream<Stop> met(Placed part, Placed other, Side side, BigFraction length) {
        return Motion.free(part.solid(), List.of(other.solid()), side.unit())
                .filter(after -> Exact.compare(after, length) < 0)
                .filter(after -> clear(part.solid(), other.solid()))
                .map(after -> new Stop(other.name(), after))
                .stream();
    }

    /** Parts that share volume cannot move at all; that was told. */
    private static boolean clear(Solid one, Solid other) {
        return one.intersect(other).isEmpty();
    }

    private static String toward(String word) {
        return word.equals("up") || word.equals("down") ? word + "ward" : "to the " + word;
    }

    private static Finding finding(MadeJoint made, Stop stop, Settings settings) {
        String moved = made.joint().left().name();
        String word = WAYS.stream().flatMap(name -> made.joint().word(name).stream()).findFirst().orElse("");
        boolean at = stop.after().signum() == 0;
        return Finding.of(STUCK, made.joint().at(), "`" + moved + "` cannot come out " + toward(word))
                .found((at ? "`" + stop.part() + "` stands in its way from the start."
                        : "It strikes `" + stop.part() + "` after " + Amounts.fine(stop.after().doubleValue(), settings)
                                + "."))
                .because(
                        "It was moved along its way by its own length, past every part where it stands (derived, from the"
                                + " bodies alone).")
                .about(moved)
                .about(stop.part())
                .number("after", stop.after().doubleValue())
                .remedy(Remedy.choice("make `" + stop.part() + "` lower, or let `" + moved + "` come out another way"))
                .build();
    }
}

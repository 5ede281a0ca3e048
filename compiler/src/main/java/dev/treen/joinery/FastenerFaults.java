package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import dev.treen.source.Span;
import dev.treen.wood.Figures;
import dev.treen.wood.PullOut;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is to be said of screws and nails (rules of the trade J-18, J-19 and S-05). */
final class FastenerFaults {
    private final Driven driven;
    private final Fastener fastener;
    private final Spots spots;
    private final LengthFormat format;
    private final Joint joint;
    private final String what;

    FastenerFaults(Driven driven, Fastener fastener, Spots spots, LengthFormat format) {
        this.driven = driven;
        this.fastener = fastener;
        this.spots = spots;
        this.format = format;
        this.joint = driven.meeting().joint();
        this.what = fastener.screw() ? "screw" : "nail";
    }

    /** What makes the joint impossible. */
    static Optional<Finding> impossible(Driven driven, Fastener fastener, LengthFormat format) {
        Joint joint = driven.meeting().joint();
        String what = fastener.screw() ? "screw" : "nail";
        Optional<Finding> count = joint.number("count")
                .filter(n -> n.doubleValue() < 1 || n.doubleValue() > Spots.MOST
                        || n.doubleValue() != Math.rint(n.doubleValue()))
                .map(n -> unfit(joint, "count", "A " + what + " joint has 1 to " + Spots.MOST + " " + what + "s")
                        .build());
        Optional<Finding> gauge = joint.number("gauge")
                .filter(n -> n.doubleValue() != Math.rint(n.doubleValue())
                        || dev.treen.wood.FastenerTable.gauge(n.intValue()).isEmpty())
                .map(n -> unfit(joint, "gauge", "No wood screw is made in this number")
                        .found("They are numbered from 0 to 24, thicker from number to number.")
                        .build());
        return count.or(() -> gauge).or(() -> sizes(driven, fastener, format)).or(() -> unmoving(driven));
    }

    /** An edge that is to stay where it is, and toward which nothing moves. */
    private static Optional<Finding> unmoving(Driven driven) {
        Joint joint = driven.meeting().joint();
        List<Direction> ways = Stream.of(driven.row(), driven.beside())
                .filter(axis -> driven.meeting().left().measure(axis) != 0
                        || driven.meeting().right().measure(axis) != 0)
                .flatMap(axis -> Stream.of(Direction.of(Axes.number(axis), -1), Direction.of(Axes.number(axis), 1)))
                .toList();
        return joint.given("fixed")
                .filter(fixed -> joint.word("fixed").flatMap(Direction::named).filter(way -> !ways.contains(way))
                        .isPresent())
                .map(fixed -> {
                    String edges = ways.stream().map(Direction::word).collect(Collectors.joining("` or `", "`", "`"));
                    Finding.Builder finding = unfit(joint, "fixed", "Nothing moves past the screws on that side")
                            .found(ways.isEmpty()
                                    ? "Both parts lie along their grain there."
                                    : "What moves with the seasons goes toward " + edges + ".")
                            .because("The edge that stays is where the slots count from: an edge across the grain.");
                    ways.stream().findFirst().ifPresentOrElse(
                            way -> finding.remedy(Faults.setting(joint, "fixed", way.word(),
                                    "name such an edge, as `fixed " + way.word() + "`")),
                            () -> finding.remedy(Remedy.choice("leave `fixed` out")));
                    return finding.build();
                });
    }

    /** Holes that run into each other. */
    static Optional<Finding> crowded(Driven driven, Fastener fastener, Spots spots, LengthFormat format) {
        Joint joint = driven.meeting().joint();
        String what = fastener.screw() ? "screw" : "nail";
        boolean apart = spots.at().size() < 2 || spots.every().value().compareTo(fastener.thick().value()) > 0;
        if (apart && spots.at().size() <= Spots.MOST) {
            return Optional.empty();
        }
        String property = joint.given("every").isPresent() ? "every" : "count";
        return Optional.of(unfit(joint, property, apart
                ? "So many " + what + "s in one row are not meant"
                : "The holes of the " + what + "s run into each other")
                .found("There are " + spots.at().size() + ", " + format.text(spots.every().value())
                        + " from one to the next, and each is " + format.text(fastener.thick().value()) + " thick.")
                .because("Wood between two holes has to hold; in a row along the grain it splits from one to the next.")
                .remedy(auto(joint, property))
                .build());
    }

    private static Optional<Finding> sizes(Driven driven, Fastener fastener, LengthFormat format) {
        Joint joint = driven.meeting().joint();
        String what = fastener.screw() ? "screw" : "nail";
        if (fastener.thick().value().signum() <= 0) {
            return Optional.of(unfit(joint, "thick", "A " + what + " has some thickness").build());
        }
        if (fastener.bore().value().compareTo(fastener.thick().value()) > 0) {
            return Optional.of(unfit(joint, "bore", "The hole is wider than the " + what + ", which holds nothing then")
                    .found("The hole is " + format.text(fastener.bore().value()) + " wide, the " + what + " "
                            + format.text(fastener.thick().value()) + " thick.")
                    .remedy(auto(joint, "bore"))
                    .build());
        }
        if (fastener.sink().value().compareTo(driven.through()) >= 0 && fastener.sink().value().signum() > 0) {
            return Optional.of(unfit(joint, "sink", "The head is let in through all of `" + joint.left().name() + "`")
                    .found("It is let in " + format.text(fastener.sink().value()) + ", and there are "
                            + format.text(driven.through()) + ".")
                    .build());
        }
        Length under = driven.through().minus(fastener.sink().value());
        if (fastener.cone().signum() > 0 && driven.through().signum() > 0 && fastener.cone().compareTo(under) >= 0) {
            return Optional
                    .of(unfit(joint, "sink", "The countersunk heads are drawn through `" + joint.left().name() + "`")
                            .found("Their countersink is " + format.text(fastener.cone()) + " deep, and there are "
                                    + format.text(under) + " for it.")
                            .because("No wood stays under the head to be held.")
                            .remedy(Faults.setting(joint, "head", "round", "take round heads: `head round`"))
                            .build());
        }
        if (fastener.point().compareTo(driven.through()) <= 0) {
            return Optional
                    .of(unfit(joint, "long", "The " + what + "s do not reach into `" + joint.right().name() + "`")
                            .found("They are " + format.text(fastener.reach().value()) + " long and go through "
                                    + format.text(driven.through().minus(fastener.sink().value())) + " first.")
                            .remedy(auto(joint, "long"))
                            .build());
        }
        Measure end = joint.length("end").orElse(fastener.sink());
        boolean many = joint.number("count").map(n -> n.intValue() > 1).orElse(false);
        Length row = driven.span(driven.row());
        return many && end.value().times(2).compareTo(row) >= 0
                ? Optional.of(unfit(joint, "end", "The ends leave no room for a row of " + what + "s")
                        .found("The parts meet over " + format.text(row) + ".")
                        .build())
                : Optional.empty();
    }

    private static Finding.Builder unfit(Joint joint, String property, String headline) {
        Span at = joint.given(property).map(setting -> setting.valueAt()).orElse(joint.at());
        return Finding.of(JoineryFindings.DOES_NOT_FIT, at, headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    /** What can be done and should not be. */
    List<Finding> all(Surroundings surroundings) {
        List<Finding> findings = new ArrayList<>();
        point().ifPresent(findings::add);
        grip().ifPresent(findings::add);
        split().ifPresent(findings::add);
        edges().ifPresent(findings::add);
        findings.addAll(new FastenerHits(driven, fastener, spots, format).all(surroundings));
        return findings;
    }

    /** The point comes through the right part, or nearly. */
    private Optional<Finding> point() {
        Length left = driven.through().plus(driven.depth()).minus(fastener.point());
        Length least = Length.nearest(Figures.standard().value("screw.behind"), Length.ofMm(1));
        if (left.compareTo(least) >= 0) {
            return Optional.empty();
        }
        boolean out = left.signum() <= 0;
        return Optional.of(said(
                out ? JoineryFindings.LEAVES_WOOD : JoineryFindings.NEARLY_THROUGH,
                at("long"),
                "The " + what + "s come " + (out ? "" : "nearly ") + "through `" + joint.right().name() + "`")
                .found("Their points lie " + format.text(fastener.point()) + " below the surface; the wood ends at "
                        + format.text(driven.through().plus(driven.depth())) + ".")
                .because("A point that stands out tears hands and cloth; one just below the surface lifts it"
                        + " (common practice, no source).")
                .remedy(auto(joint, "long"))
                .build());
    }

    /** Too little of it holds. */
    private Optional<Finding> grip() {
        Length in = fastener.point().minus(driven.through());
        double share = in.toDoubleMm() / fastener.reach().value().toDoubleMm();
        if (share >= Figures.standard().value("screw.grip.warning")) {
            return Optional.empty();
        }
        return Optional.of(said(
                JoineryFindings.GRIPS_LITTLE, at("long"),
                "The " + what + "s hardly grip `" + joint.right().name() + "`")
                .found("Of " + format.text(fastener.reach().value()) + ", " + format.text(in.max(Length.ZERO))
                        + " are in it; two thirds are usual.")
                .because("What is in the second piece holds (two thirds: US Navy training course 14119, for nails;"
                        + " less than half is common practice, no source).")
                .remedy(Remedy.choice(fastener.screw()
                        ? "take longer ones, let the heads in with `sink`, or drive them from the thinner part"
                        : "take longer ones, or nail from the thinner part"))
                .build());
    }

    /** The edge that is entered is too thin, or the nail too thick for what it goes through. */
    private Optional<Finding> split() {
        double thick = fastener.thick().value().toDoubleMm();
        if (fastener.screw()) {
            double edge = joint.right().thickness().value().toDoubleMm();
            boolean thin = driven.thin().isPresent()
                    && PullOut.edge(edge, thick, Figures.standard()).grade() != Verdict.Grade.FINE;
            return thin
                    ? Optional.of(said(JoineryFindings.WILL_SPLIT, at("thick"), "The edge of `" + joint.right().name()
                            + "` is thin for these screws")
                            .found("It is " + format.text(joint.right().thickness().value()) + " thick, the screws "
                                    + format.text(fastener.thick().value()) + "; two and a half times that are wanted.")
                            .because("A thread wedges the wood apart (common practice, no source).")
                            .remedy(auto(joint, joint.given("gauge").isPresent() ? "gauge" : "thick"))
                            .build())
                    : Optional.empty();
        }
        if (fastener.bored()) {
            return Optional.empty();
        }
        for (var part : List.of(joint.left(), joint.right())) {
            double most = part.thickness().value().toDoubleMm() * FastenerSizes.split(part).value();
            if (thick > most) {
                return Optional.of(said(JoineryFindings.WILL_SPLIT, at("thick"), "These nails may split `" + part.name()
                        + "`")
                        .found("They are " + format.text(fastener.thick().value()) + " thick; in wood of "
                                + format.text(part.thickness().value()) + ", "
                                + format.text(Length.nearest(most, Length.ofMm(1).dividedBy(100)))
                                + " go in without boring.")
                        .because("A sixth of the thickness in hardwood and a quarter in softwood are safe (common"
                                + " practice, no source).")
                        .remedy(Remedy.choice("bore for them: `bore auto`, or take thinner ones"))
                        .build());
            }
        }
        return Optional.empty();
    }

    /** Too near an end or an edge of either part; out of it altogether. */
    private Optional<Finding> edges() {
        Finding worst = null;
        for (boolean held : new boolean[]{true, false}) {
            Meeting.Placed part = held ? driven.meeting().left() : driven.meeting().right();
            for (Axis axis : List.of(driven.row(), driven.beside())) {
                for (int sign : new int[]{-1, 1}) {
                    Optional<Finding> found = edge(held, part, Side.of(axis, sign));
                    if (found.isPresent() && found.get().kind().equals(JoineryFindings.LEAVES_WOOD)) {
                        return found;
                    }
                    worst = worst == null ? found.orElse(null) : worst;
                }
            }
        }
        return Optional.ofNullable(worst);
    }

    private Optional<Finding> edge(boolean held, Meeting.Placed part, Side side) {
        Length wood = Length.ofMm((held ? driven.held() : driven.entered()).coordinate(side));
        Length nearest = null;
        for (Length along : spots.at()) {
            Length at = side.axis() == driven.row() ? along : driven.middle(side.axis());
            Length away = wood.minus(at).times(side.sign());
            nearest = nearest == null ? away : nearest.min(away);
        }
        if (nearest == null) {
            return Optional.empty();
        }
        String name = part.part().name();
        Length half = (held ? fastener.hole() : fastener.thick().value()).dividedBy(2);
        if (nearest.compareTo(half) <= 0) {
            return Optional.of(said(JoineryFindings.LEAVES_WOOD, at("end"), "A " + what + " comes out at the side of `"
                    + name + "`")
                    .found("Its middle is " + format.text(nearest) + " from there.")
                    .because("Its hole breaks out, and it holds nothing.")
                    .remedy(auto(joint, "end"))
                    .build());
        }
        Length keeps = fastener.keeps(held, part.measure(side.axis()), driven.through());
        boolean end = part.measure(side.axis()) == 0;
        return nearest.compareTo(keeps) >= 0
                ? Optional.empty()
                : Optional.of(said(JoineryFindings.NEAR_EDGE, at("end"), "A " + what + " stands near "
                        + (end ? "the end" : "an edge") + " of `" + name + "`")
                        .found("Its middle is " + format.text(nearest) + " from there; "
                                + format.text(keeps) + " are wanted" + (fastener.screw() || fastener.bored() || !end
                                        ? "."
                                        : " where it is not bored."))
                        .because("The wood splits from there (" + (!fastener.screw() && !end
                                ? "Wood Handbook FPL-GTR-282 p. 8-7: half the piece that is held"
                                : "common practice, no source") + ").")
                        .remedy(Remedy.choice(fastener.screw()
                                ? "move it inward, or take thinner ones"
                                : "move it inward, bore for it, or take thinner ones"))
                        .build());
    }

    private Span at(String property) {
        return joint.given(property).map(setting -> setting.valueAt()).orElse(joint.at());
    }

    private Finding.Builder said(FindingKind kind, Span at, String headline) {
        return Faults.said(joint, kind, at, headline);
    }

    static Remedy auto(Joint joint, String name) {
        return joint.given(name)
                .map(given -> Remedy.safe(
                        name.equals("gauge") ? "leave the screw to Treen" : "write `" + name + " auto`",
                        name.equals("gauge")
                                ? new Edit(
                                        given.nameAt().to(given.valueAt()),
                                        "thick auto")
                                : new Edit(given.valueAt(), "auto")))
                .orElseGet(() -> Remedy.choice("write `" + name.toLowerCase(Locale.ROOT) + "` as it is wanted"));
    }
}

package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Convex;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** What screws and nails have alike: a row of them, their holes, and what is to be said of both. */
final class Fastening {
    /** Properties of both. */
    static final List<PropertySchema> SHARED = List.of(
            PropertySchema.optional(
                    "long",
                    new Shape.LengthOrAuto(),
                    "the shortest usual length of which two thirds are in the right part; never so long that they come through",
                    "How long they are, head to point."),
            PropertySchema.optional(
                    "count", Shape.Plain.COUNT, "as many as `every` asks for", "How many, in one row."),
            PropertySchema.optional(
                    "every",
                    new Shape.LengthOrAuto(),
                    "screws 150 mm or 6 in, nails 75 mm or 3 in",
                    "The farthest from one to the next."),
            PropertySchema.optional(
                    "end",
                    new Shape.LengthOrAuto(),
                    "screws 7 shanks from an end of a part and 3 from an edge; nails 10 times their thickness from an end, 5"
                            + " where they are bored",
                    "From each end of the surface over which the parts meet to the first of them."),
            PropertySchema.optional(
                    "pull",
                    Shape.Plain.MASS,
                    "nothing",
                    "The weight that pulls them straight out, shared by all of them. Treen compares it with what small clear"
                            + " pieces bear; where people depend on it, the local code and licensed practice decide."));

    private Fastening() {
    }

    static Effect make(
            Meeting meeting, Surroundings surroundings, BiFunction<Driven, Surroundings, Fastener> sized) {
        Optional<Driven> found = Driven.of(meeting, surroundings);
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "Screws and nails go where two parts lie on each other, or where their corner is joined."));
        }
        Driven driven = found.get();
        Fastener fastener = sized.apply(driven, surroundings);
        LengthFormat format = surroundings.settings().format();
        Optional<Finding> impossible = FastenerFaults.impossible(driven, fastener, format);
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        Spots spots = Spots.of(driven, fastener, surroundings);
        Optional<Finding> crowded = FastenerFaults.crowded(driven, fastener, spots, format);
        if (crowded.isPresent()) {
            return Effect.only(crowded.get());
        }
        List<Slots> slots = new ArrayList<>();
        List<Length> plain = new ArrayList<>();
        List<Cut> cuts = new ArrayList<>();
        for (Length along : spots.at()) {
            Optional<Slots> slot = fastener.screw() ? Slots.of(driven, along, surroundings) : Optional.empty();
            slot.ifPresentOrElse(slots::add, () -> plain.add(along));
            Bores.held(driven, fastener, along, slot).forEach(body -> cuts.add(cut(meeting, body, true)));
            Bores.entered(driven, fastener, along).forEach(body -> cuts.add(cut(meeting, body, false)));
        }
        Fasteners set = set(driven, fastener, spots, plain);
        return Effect.of(List.of(), figures(meeting.joint(), driven, fastener, spots, slots), cuts)
                .saying(new FastenerFaults(driven, fastener, spots, format).all(surroundings))
                .with(set)
                .taking(fastener.screw() ? Hardware.Kind.SCREW : Hardware.Kind.NAIL, spots.at().size(),
                        fastener.thick(), fastener.reach());
    }

    private static Cut cut(Meeting meeting, Convex body, boolean held) {
        String part = (held ? meeting.left() : meeting.right()).part().name();
        return new Cut.Bore(part, body, meeting.origin());
    }

    private static Fasteners set(Driven driven, Fastener fastener, Spots spots, List<Length> plain) {
        Length grip = fastener.point().minus(driven.through());
        Length thread = Fastener.times(fastener.reach().value(), Figures.standard().value("screw.thread"));
        return new Fasteners(
                fastener.form(),
                spots.at().size(),
                spots.at().size() - plain.size(),
                fastener.thick().value(),
                grip,
                fastener.screw() ? grip.min(thread) : grip,
                driven.endGrain(),
                plain.isEmpty() ? Length.ZERO : plain.getLast().minus(plain.getFirst()));
    }

    private static List<Figure> figures(
            Joint joint, Driven driven, Fastener fastener, Spots spots, List<Slots> slots) {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("thick", fastener.thick(), joint.given("thick").isEmpty()));
        figures.add(new Figure("long", fastener.reach(), joint.given("long").isEmpty()));
        figures.add(new Figure("bore", fastener.bore(), joint.given("bore").isEmpty()));
        figures.add(new Figure("end", spots.end(), joint.given("end").isEmpty()));
        if (spots.every().value().signum() > 0) {
            figures.add(new Figure("every", spots.every(), joint.given("every").isEmpty()));
        }
        if (fastener.sink().value().signum() > 0) {
            figures.add(new Figure("sink", fastener.sink(), false));
        }
        if (fastener.cone().signum() > 0) {
            figures.add(new Figure("head",
                    Ruled.of("head", fastener.head(), "twice the shank: so wide is the countersink",
                            Figures.standard().get("screw.head").citation().source() + ", from memory",
                            fastener.thick()),
                    true));
        }
        figures.add(new Figure("grip", grip(driven, fastener), true));
        slots.stream().map(Slots::room).max(Length::compareTo).ifPresent(room -> {
            Length all = room.plus(fastener.thick().value());
            figures.add(new Figure("slot",
                    Ruled.at(joint.at(), "slot", all,
                            "the shank, what the wood moves past it from the driest to the wettest season, and 0.5 mm",
                            "travel derived; 0.5 mm common practice, no source", List.of(fastener.thick().how())),
                    true));
        });
        return figures;
    }

    private static Measure grip(Driven driven, Fastener fastener) {
        Length grip = fastener.point().minus(driven.through());
        return Ruled.of("grip", grip, "what of it is in the second part", "", fastener.reach());
    }

    /** The parts held, and those that are entered. */
    static List<String> named(List<MadeJoint> statement, boolean held) {
        return statement.stream()
                .map(made -> (held ? made.joint().left() : made.joint().right()).name())
                .distinct()
                .toList();
    }

    /** The settings that are of some size. */
    static List<Work.GaugeSetting> settings(List<MadeJoint> statement, String... names) {
        List<Work.GaugeSetting> settings = new ArrayList<>();
        for (String name : names) {
            Length value = Work.figure(statement, name);
            if (value.signum() > 0) {
                settings.add(new Work.GaugeSetting(name, value));
            }
        }
        return settings;
    }
}

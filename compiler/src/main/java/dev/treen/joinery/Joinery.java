package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Allowances;
import dev.treen.model.Board;
import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Project;
import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Makes the joints of a project: from seen sizes to finished and rough ones, and from boxes to shapes. Nothing is thrown
 * for what a user wrote.
 */
public final class Joinery {
    private static final String FINISHED = " finished";

    private final Project project;
    private final Map<String, Part> seen;
    private final List<Finding> findings = new ArrayList<>();
    private final Additions additions = new Additions();
    private final Map<String, List<Cut>> cuts = new HashMap<>();

    private Joinery(Project project, Map<String, Part> seen) {
        this.project = project;
        this.seen = seen;
    }

    /** The project with its joints made. */
    public static Joined join(Project project) {
        return new Subassemblies().join(project);
    }

    /** The same, all at once. */
    static Joined made(Project project) {
        boolean overall = SeenSizes.anyOverall(project);
        return new Joinery(project, overall ? settled(project) : SeenSizes.written(project)).run();
    }

    /** The seen sizes of a project with overall measures: the joints are made once for what they add. */
    private static Map<String, Part> settled(Project project) {
        Joinery trial = new Joinery(project, SeenSizes.toNeighbours(project));
        trial.made(trial.meetings());
        Map<String, Part> parts = new LinkedHashMap<>();
        for (Part part : project.parts()) {
            Part own = part;
            for (int measure = 0; measure < 3; measure++) {
                Optional<Measure> joints = trial.additions.to(part, measure);
                if (SeenSizes.overall(part, measure) && joints.isPresent()) {
                    own = SeenSizes.without(own, measure, joints.get());
                }
            }
            parts.put(part.name(), own);
        }
        return parts;
    }

    private Joined run() {
        Map<Integer, List<MadeJoint>> statements = made(meetings());
        List<MadeJoint> joints = new ArrayList<>();
        statements.values().forEach(all -> joints.addAll(withWorks(all)));
        List<FinishedPart> parts = project.parts().stream().map(this::finished).toList();
        return new Joined(project, parts, joints, findings, new Natures(project.settings()), List.of());
    }

    private Map<Integer, List<MadeJoint>> made(List<Meeting> meetings) {
        Surroundings surroundings = new Surroundings(project.settings(), meetings, additions);
        Map<Integer, List<MadeJoint>> statements = new LinkedHashMap<>();
        for (JointKind.Turn turn : JointKind.Turn.values()) {
            for (Meeting meeting : meetings) {
                JointKinds.named(meeting.joint().kind())
                        .filter(kind -> kind.turn() == turn)
                        .flatMap(kind -> made(kind, meeting, surroundings))
                        .ifPresent(m -> statements
                                .computeIfAbsent(m.joint().statement(), s -> new ArrayList<>())
                                .add(m));
            }
        }
        return statements;
    }

    private List<Meeting> meetings() {
        Map<String, Optional<Meeting.Placed>> placed = new HashMap<>();
        seen.values().forEach(p -> placed.put(p.name(), Meeting.Placed.of(p)));
        Set<String> told = new LinkedHashSet<>();
        List<Meeting> meetings = new ArrayList<>();
        for (Joint joint : project.joints()) {
            Optional<Meeting.Placed> left = placed.getOrDefault(joint.left().name(), Optional.empty());
            Optional<Meeting.Placed> right = placed.getOrDefault(joint.right().name(), Optional.empty());
            if (left.isEmpty() || right.isEmpty()) {
                cannotLie(left.isEmpty() ? joint.left() : joint.right(), joint, told);
                continue;
            }
            Meeting meeting = new Meeting(
                    joint, left.get(), right.get(), left.get().box().contact(right.get().box()));
            switch (meeting.contact()) {
                case BoxContact.Apart apart -> findings.add(Faults.apart(meeting, apart, project.settings()));
                case BoxContact.Overlapping shared -> {
                    if (mayCross(meeting)) {
                        meetings.add(meeting);
                    } else {
                        findings.add(Faults.overlapping(meeting, shared.shared(), project.settings()));
                    }
                }
                case BoxContact.Corner corner -> meetings.add(meeting);
                case BoxContact.Edge edge -> meetings.add(meeting);
                case BoxContact.FaceToFace face -> meetings.add(meeting);
            }
        }
        return meetings;
    }

    /** Whether the joint is cut out of the space that both parts fill. */
    private static boolean mayCross(Meeting meeting) {
        return JointKinds.named(meeting.joint().kind()).filter(JointKind::crosses).isPresent()
                && Lap.of(meeting).isPresent();
    }

    /** A part without a place, or one of no size, which is told once. */
    private void cannotLie(Part part, Joint joint, Set<String> told) {
        if (part.placing().isEmpty()) {
            needsPlace(joint, part, told);
            return;
        }
        Part own = seen.getOrDefault(part.name(), part);
        for (int measure = 0; measure < 3; measure++) {
            boolean eaten = part.measure(measure).value().signum() > 0
                    && own.measure(measure).value().signum() <= 0;
            if (eaten && told.add(part.name())) {
                findings.add(Finding.of(
                        JoineryFindings.NOTHING_SEEN,
                        part.measure(measure).at(),
                        "The joints of `" + part.name() + "` take all of its size")
                        .found("Written over all it has "
                                + project.settings().format().text(part.measure(measure).value())
                                + ", and its joints want "
                                + project.settings()
                                        .format()
                                        .text(part.measure(measure).value().minus(own.measure(measure).value()))
                                + ".")
                        .about(part.name())
                        .build());
            }
        }
    }

    private void needsPlace(Joint joint, Part part, Set<String> told) {
        if (told.add(part.name())) {
            findings.add(Finding.of(
                    JoineryFindings.NEEDS_PLACE,
                    joint.at(),
                    "`" + part.name() + "` is joined but has no place, so it is not known which end meets what")
                    .related(part.nameAt(), "give it a `place { length …; width …; at x, y, z }`")
                    .about(part.name())
                    .build());
        }
    }

    private Optional<MadeJoint> made(JointKind kind, Meeting meeting, Surroundings surroundings) {
        SettingFaults settings = new SettingFaults(
                meeting, kind.schema().block().properties(), project.settings().format());
        Effect effect = settings.senseless().map(Effect::only).orElseGet(() -> kind.make(meeting, surroundings));
        effect.findings().forEach(finding -> findings.add(finding.kind().equals(JoineryFindings.MEETS_WRONGLY)
                ? new Moved(meeting, project.settings()).toMake(kind, surroundings).map(finding::before).orElse(finding)
                : settings.withWayOut(finding)));
        settings.beyond(effect).ifPresent(findings::add);
        ForeignWork.cut(meeting, effect).ifPresent(findings::add);
        effect.additions().forEach(additions::add);
        effect.cuts().forEach(c -> {
            cuts.computeIfAbsent(c.part(), p -> new ArrayList<>()).add(c);
            surroundings.cut(meeting, c);
        });
        return effect.isMade() ? Optional.of(new MadeJoint(
                meeting, effect.figures(), List.of(), effect.fasteners(), effect.hardware(), effect.pieces()))
                : Optional.empty();
    }

    /** The pairs of one statement share their work; it stands with the first of them. */
    private static List<MadeJoint> withWorks(List<MadeJoint> statement) {
        MadeJoint first = statement.getFirst();
        List<Work> works = JointKinds.named(first.joint().kind())
                .map(kind -> kind.works(statement))
                .map(asked -> ForeignWork.in(statement, asked))
                .orElse(List.of());
        List<MadeJoint> all = new ArrayList<>(statement);
        all.set(0, first.asking(works));
        return all;
    }

    private FinishedPart finished(Part part) {
        Measure length = finished(part, 0);
        Measure width = finished(part, 1);
        Measure thickness = finished(part, 2);
        if (part.bought().isPresent()) {
            // It comes in its finished size.
            return new FinishedPart(part, length, width, thickness, length, width, thickness, shape(part));
        }
        Allowances allow = part.allow();
        return new FinishedPart(
                part,
                length,
                width,
                thickness,
                rough(length, allow.shooting(), "shooting"),
                rough(width, allow.planing(), "planing"),
                // A sheet has its thickness; nobody planes it.
                part.from().filter(Board::sheet).isPresent()
                        ? thickness
                        : rough(thickness, allow.planing(), "planing"),
                shape(part));
    }

    private Measure finished(Part part, int measure) {
        Measure written = part.measure(measure);
        Optional<Measure> joints = SeenSizes.overall(part, measure) ? Optional.empty() : additions.to(part, measure);
        return joints.map(more -> plus(written, more)).orElse(written);
    }

    private static Measure plus(Measure seen, Measure more) {
        Length value = seen.value().plus(more.value());
        Derivation how = Derivation.combined(
                seen.how().label() + FINISHED,
                Measure.datum(value),
                "+",
                seen.how().named(between(more.how())),
                more.how());
        return new Measure(value, seen.at(), how);
    }

    /** What the seen size is called beside what its joints add: an opening between two grooves, the inside of a box. */
    private static String between(Derivation joints) {
        boolean both = joints.formula() instanceof Derivation.Combined(String sign, var two, var each)
                && sign.equals("×")
                && joints.label().isEmpty();
        if (!both || !(joints.formula() instanceof Derivation.Combined sum)) {
            return "seen";
        }
        return switch (sum.right().label()) {
            case "" -> "opening";
            case "corner" -> "inside";
            default -> "between";
        };
    }

    private static Measure rough(Measure finished, Measure allowance, String what) {
        Length value = finished.value().plus(allowance.value().times(2));
        Length both = allowance.value().times(2);
        Derivation twice = Derivation.rule(
                what,
                Measure.datum(both),
                "twice, for both sides",
                "allowance",
                List.of(allowance.how()));
        return new Measure(
                value,
                finished.at(),
                Derivation.combined("rough", Measure.datum(value), "+", finished.how(), twice));
    }

    private Optional<Shaped> shape(Part part) {
        return Meeting.Placed.of(seen.getOrDefault(part.name(), part)).map(placed -> {
            Box box = additions.grown(part, placed.box());
            List<Cut> mine = cuts.getOrDefault(part.name(), List.of()).stream().flatMap(this::settled).toList();
            boolean bored = mine.stream().anyMatch(Cut.Bore.class::isInstance);
            Shaped bare = new Shaped(
                    () -> cut(box, mine.stream().filter(cut -> !(cut instanceof Cut.Bore)).toList()));
            return bored ? new Shaped(() -> cut(box, mine), bare) : bare;
        });
    }

    /** A stopped groove once the ends of its part are known: every joint has added by now. */
    private Stream<Cut> settled(Cut cut) {
        if (!(cut instanceof Cut.Stopped stopped)) {
            return Stream.of(cut);
        }
        return Optional.ofNullable(seen.get(stopped.of()))
                .flatMap(of -> Meeting.Placed.of(of).map(placed -> additions.grown(of, placed.box())))
                .stream()
                .flatMap(ends -> CutStop.hollows(stopped, ends));
    }

    private static Solid cut(Box box, List<Cut> cuts) {
        Solid solid = Solid.of(box);
        for (Cut cut : cuts) {
            solid = switch (cut) {
                case Cut.Hollow(String name, Box space, Origin origin) ->
                    solid.subtract(Convex.box(space, origin), origin);
                case Cut.Slice(String name, var plane, Origin origin) -> solid.keep(plane, origin);
                case Cut.Carve(String name, Convex body, Origin origin) -> solid.subtract(body, origin);
                case Cut.Stopped stopped -> throw new IllegalStateException("not settled: " + stopped);
                case Cut.RoundHole(String name, Convex rod, Origin origin) -> solid.subtract(rod);
                case Cut.Bore(String name, Convex body, Origin origin) -> solid.bore(body);
            };
        }
        return solid;
    }
}

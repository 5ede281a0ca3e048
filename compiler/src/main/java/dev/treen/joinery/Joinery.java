package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Allowances;
import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Project;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Solid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes the joints of a project: from seen sizes to finished and rough ones, and from boxes to shapes. Nothing is thrown
 * for what a user wrote.
 */
public final class Joinery {
    private static final String FINISHED = " finished";

    private final Project project;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, List<Addition>> additions = new LinkedHashMap<>();
    private final Map<String, List<Cut>> cuts = new LinkedHashMap<>();

    private Joinery(Project project) {
        this.project = project;
    }

    /** The project with its joints made. */
    public static Joined join(Project project) {
        return new Joinery(project).run();
    }

    private Joined run() {
        List<Meeting> meetings = meetings();
        Surroundings surroundings = new Surroundings(project.settings(), meetings);
        Map<Integer, List<MadeJoint>> statements = new LinkedHashMap<>();
        for (Meeting meeting : meetings) {
            JointKinds.named(meeting.joint().kind())
                    .flatMap(kind -> made(kind, meeting, surroundings))
                    .ifPresent(m -> statements
                            .computeIfAbsent(m.joint().statement(), s -> new ArrayList<>())
                            .add(m));
        }
        List<MadeJoint> joints = new ArrayList<>();
        statements.values().forEach(all -> joints.addAll(withWorks(all)));
        List<FinishedPart> parts = project.parts().stream().map(this::finished).toList();
        return new Joined(project, parts, joints, findings);
    }

    private List<Meeting> meetings() {
        Map<String, Optional<Meeting.Placed>> placed = new LinkedHashMap<>();
        project.parts().forEach(p -> placed.put(p.name(), Meeting.Placed.of(p)));
        Set<String> told = new LinkedHashSet<>();
        List<Meeting> meetings = new ArrayList<>();
        for (Joint joint : project.joints()) {
            Optional<Meeting.Placed> left = placed.getOrDefault(joint.left().name(), Optional.empty());
            Optional<Meeting.Placed> right = placed.getOrDefault(joint.right().name(), Optional.empty());
            if (left.isEmpty() || right.isEmpty()) {
                needsPlace(joint, left.isEmpty() ? joint.left() : joint.right(), told);
                continue;
            }
            Meeting meeting = new Meeting(
                    joint, left.get(), right.get(), left.get().box().contact(right.get().box()));
            switch (meeting.contact()) {
                case BoxContact.Apart apart -> findings.add(apart(meeting, apart));
                case BoxContact.Overlapping shared -> findings.add(overlapping(meeting, shared.shared()));
                case BoxContact.Corner corner -> meetings.add(meeting);
                case BoxContact.Edge edge -> meetings.add(meeting);
                case BoxContact.FaceToFace face -> meetings.add(meeting);
            }
        }
        return meetings;
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

    private Finding apart(Meeting meeting, BoxContact.Apart apart) {
        LengthFormat format = project.settings().format();
        StringBuilder how = new StringBuilder();
        for (Axis axis : Axis.values()) {
            Length gap = Length.ofMm(apart.gaps().get(axis));
            if (!gap.isZero()) {
                how.append(how.isEmpty() ? "" : ", ").append(format.text(gap)).append(switch (axis) {
                    case X -> " from left to right";
                    case Y -> " from front to back";
                    case Z -> " in height";
                });
            }
        }
        Joint joint = meeting.joint();
        return Finding.of(
                JoineryFindings.DO_NOT_MEET,
                joint.at(),
                "`" + joint.left().name() + "` and `" + joint.right().name() + "` do not meet")
                .found("Between them lie " + how + ".")
                .because("A joint is cut where two parts touch; sizes are written between the joints.")
                .related(meeting.left().placing().span(), "`" + joint.left().name() + "` lies here")
                .related(meeting.right().placing().span(), "`" + joint.right().name() + "` lies here")
                .about(joint.left().name())
                .about(joint.right().name())
                .build();
    }

    private Finding overlapping(Meeting meeting, Box shared) {
        LengthFormat format = project.settings().format();
        List<String> sides = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            sides.add(format.text(Length.ofMm(shared.extent(axis))));
        }
        Joint joint = meeting.joint();
        return Finding.of(
                JoineryFindings.OVERLAP,
                joint.at(),
                "`" + joint.left().name() + "` and `" + joint.right().name() + "` fill the same space")
                .found("They share " + String.join(" by ", sides) + " (across, deep, high).")
                .because("Sizes are written between the joints: the joint itself adds what goes into the other part.")
                .related(meeting.left().placing().span(), "`" + joint.left().name() + "` lies here")
                .related(meeting.right().placing().span(), "`" + joint.right().name() + "` lies here")
                .about(joint.left().name())
                .about(joint.right().name())
                .build();
    }

    private Optional<MadeJoint> made(JointKind kind, Meeting meeting, Surroundings surroundings) {
        Effect effect = kind.make(meeting, surroundings);
        findings.addAll(effect.findings());
        effect.additions()
                .forEach(a -> additions.computeIfAbsent(a.part(), p -> new ArrayList<>()).add(a));
        effect.cuts().forEach(c -> cuts.computeIfAbsent(c.part(), p -> new ArrayList<>()).add(c));
        return effect.findings().isEmpty()
                ? Optional.of(new MadeJoint(meeting.joint(), effect.figures(), List.of()))
                : Optional.empty();
    }

    /** The pairs of one statement share their work; it stands with the first of them. */
    private static List<MadeJoint> withWorks(List<MadeJoint> statement) {
        MadeJoint first = statement.getFirst();
        List<Work> works = JointKinds.named(first.joint().kind())
                .map(kind -> kind.works(statement))
                .orElse(List.of());
        List<MadeJoint> all = new ArrayList<>(statement);
        all.set(0, new MadeJoint(first.joint(), first.figures(), works));
        return all;
    }

    private FinishedPart finished(Part part) {
        Measure[] sizes = {part.length(), part.width(), part.thickness()};
        for (Addition addition : additions.getOrDefault(part.name(), List.of())) {
            int which = part.placing().orElseThrow().measureAlong(Axes.number(addition.side().axis()));
            boolean overall = which == 0 ? part.overall().length() : which == 1 && part.overall().width();
            if (!overall) {
                sizes[which] = plus(sizes[which], addition.amount());
            }
        }
        Allowances allow = part.allow();
        return new FinishedPart(
                part,
                sizes[0],
                sizes[1],
                sizes[2],
                rough(sizes[0], allow.shooting(), "shooting"),
                rough(sizes[1], allow.planing(), "planing"),
                rough(sizes[2], allow.planing(), "planing"),
                solid(part));
    }

    private static Measure plus(Measure sum, Measure more) {
        Length value = sum.value().plus(more.value());
        String label = sum.how().label();
        boolean firstTime = !label.endsWith(FINISHED);
        Derivation how = Derivation.combined(
                firstTime ? label + FINISHED : label,
                Measure.datum(value),
                "+",
                sum.how().named(firstTime ? "seen" : ""),
                more.how());
        return new Measure(value, sum.at(), how);
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

    private Optional<Solid> solid(Part part) {
        return Meeting.Placed.of(part).map(placed -> {
            Box box = placed.box();
            for (Addition addition : additions.getOrDefault(part.name(), List.of())) {
                if (addition.amount().value().signum() > 0) {
                    box = box.join(Rebate.step(box, addition.side(), addition.amount().value()));
                }
            }
            Solid solid = Solid.of(box);
            for (Cut cut : cuts.getOrDefault(part.name(), List.of())) {
                solid = switch (cut) {
                    case Cut.Hollow(String name, Box space) ->
                        solid.subtract(Convex.box(space, Origin.cut(name)), Origin.cut(name));
                    case Cut.Slice(String name, var plane) -> solid.keep(plane, Origin.cut(name));
                };
            }
            return solid;
        });
    }
}

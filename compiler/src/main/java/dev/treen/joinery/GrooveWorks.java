package dev.treen.joinery;

import dev.treen.model.Board;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.quantity.Length;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The work of a groove: plough all that one setting ploughs, then make the panel to what was measured. */
final class GrooveWorks {
    private GrooveWorks() {
    }

    /** What has to be alike for parts to be ploughed without a change of fence, iron or stop. */
    private record Setting(boolean along, String edge, Length up, Length wide, Length deep, Length stop) {
        static Setting of(MadeJoint made) {
            return new Setting(
                    alongTheGrain(made),
                    nearerEdge(made),
                    Work.figure(made, "up"),
                    Work.figure(made, "wide"),
                    Work.figure(made, "deep"),
                    Work.figure(made, "stop"));
        }
    }

    static List<Work> of(List<MadeJoint> statement) {
        Map<Setting, List<String>> receiving = new LinkedHashMap<>();
        for (MadeJoint made : statement) {
            List<String> parts = receiving.computeIfAbsent(Setting.of(made), s -> new ArrayList<>());
            if (!parts.contains(made.joint().right().name())) {
                parts.add(made.joint().right().name());
            }
        }
        List<String> panels = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> walls = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<Work> works = new ArrayList<>();
        receiving.forEach((setting, parts) -> works.add(plough(setting, parts, panels)));
        works.add(panel(statement, panels, walls));
        statement.getFirst()
                .joint()
                .word("slide")
                .flatMap(Direction::named)
                .ifPresent(way -> works.add(fit(way, panels, walls)));
        return works;
    }

    private static Work plough(Setting setting, List<String> parts, List<String> panels) {
        boolean stopped = setting.stop().signum() > 0;
        List<Work.GaugeSetting> settings = new ArrayList<>(List.of(
                new Work.GaugeSetting("fence", setting.up()),
                new Work.GaugeSetting("iron", setting.wide()),
                new Work.GaugeSetting("depth", setting.deep())));
        if (stopped) {
            settings.add(new Work.GaugeSetting("stop", setting.stop()));
        }
        return new Work(
                setting.along() && !stopped ? Work.Stage.ALONG_STRIP : Work.Stage.AFTER_LENGTH,
                (stopped ? "Chop the stopped ends first, then work the groove for "
                        : setting.along() ? "Plough the groove for " : "Cut the groove across the grain for ")
                        + listed(panels.stream().map(panel -> "`" + panel + "`").toList()),
                parts,
                List.of(),
                stopped
                        ? "chisel, plough plane or router plane, or a cutter lowered between stops"
                        : setting.along()
                                ? "plough plane, or a cutter against a fence"
                                : "knife, fine saw, chisel and router plane",
                settings,
                "the inside face, the fence on the " + setting.edge() + " edge",
                "an offcut of the panel's thickness goes in without force",
                "Clamp the work; keep the other hand behind the iron.");
    }

    private static Work panel(List<MadeJoint> statement, List<String> panels, List<String> walls) {
        MadeJoint first = statement.getFirst();
        List<Work.GaugeSetting> settings = new ArrayList<>();
        first.figure("tongue").ifPresent(f -> {
            settings.add(new Work.GaugeSetting("tongue", f.measure().value()));
            settings.add(new Work.GaugeSetting("tongue thickness", Work.figure(first, "wide")));
        });
        first.figure("raise").ifPresent(f -> settings.add(new Work.GaugeSetting("bevel", f.measure().value())));
        statement.stream()
                .map(made -> new Work.GaugeSetting(
                        "gap at the " + made.meeting().face().map(f -> end(made, f)).orElse("edge"),
                        Work.figure(made, "gap")))
                .distinct()
                .forEach(settings::add);
        return new Work(
                Work.Stage.AFTER_MEASURING,
                "Make " + listed(panels) + " to the opening as measured: cut to size, then "
                        + (first.figure("raise").isPresent()
                                ? "work the tongue, and plane the bevels up to the field, across the grain first"
                                : first.figure("tongue").isPresent() ? "work the tongue" : "ease the edges"),
                panels,
                walls,
                "shooting board, rebate plane, gauge",
                settings,
                "the face that lies toward the groove",
                "it goes in dry all round, and can be moved by hand",
                sheets(statement) ? ofSheet(first.joint())
                        : held(first.joint())
                                + " Finish it before it is closed in, or a raw line shows when it shrinks.");
    }

    /** Whether all its panels are cut from manufactured sheets. */
    private static boolean sheets(List<MadeJoint> statement) {
        return statement.stream()
                .allMatch(made -> made.joint().left().from().filter(Board::sheet).isPresent());
    }

    /** Common practice, no source. */
    private static String ofSheet(Joint joint) {
        return (joint.word("held").isPresent() ? held(joint)
                : "A sheet hardly moves: it may lie dry in its groove or be glued in; squeezed-out glue inside is hard to"
                        + " reach.")
                + " Finish it before it is closed in: its corners are hard to reach afterwards.";
    }

    private static String held(Joint joint) {
        if (Groove.heldInTheMiddle(joint)) {
            return "Pin it at the middle of both ends, or touch them with glue no wider than a thumb; nowhere else: it has"
                    + " to move.";
        }
        return joint.word("held").flatMap(Direction::named)
                .map(way -> "Glue it along its " + way.surface() + " edge alone: the other has to move.")
                .orElse("Never glue it in: it has to move.");
    }

    /** A lid is fitted when the box is together; a base is closed in by gluing and has no such step. */
    private static Work fit(Direction slide, List<String> panels, List<String> walls) {
        return new Work(
                Work.Stage.FIT,
                "Fit " + listed(panels) + " so that it slides out to the " + slide.word() + "; wax its tongue",
                panels,
                walls,
                "block plane, wax",
                List.of(),
                "",
                "it slides from end to end without a stop",
                "Plane a little at a time, away from the fingers.");
    }

    private static String end(MadeJoint made, Side face) {
        return made.meeting().left().measure(face.axis()) == 0 ? "ends" : "long edges";
    }

    private static boolean alongTheGrain(MadeJoint made) {
        return made.meeting()
                .face()
                .filter(face -> made.meeting().right().measure(Rebate.running(made.meeting(), face)) == 0)
                .isPresent();
    }

    /** Which edge of the part that is cut is nearer to what lies in the cut. */
    static String nearerEdge(MadeJoint made) {
        Part panel = made.joint().left();
        int axis = panel.placing().map(p -> p.thickness().axis()).orElse(2);
        Length below = GrooveSizes.below(made.meeting());
        Length above = GrooveSizes.above(made.meeting());
        return Direction.of(axis, below.compareTo(above) <= 0 ? -1 : 1).surface();
    }

    private static String listed(List<String> names) {
        return String.join(", ", names);
    }
}

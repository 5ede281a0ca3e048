package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.solid.BoxContact;
import dev.treen.wood.Figures;
import dev.treen.wood.Squareness;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Errors of making that want more care than usual: mitres of wide members (rule of the trade F-03, derived) and openings that
 * leave little for being out of square (F-05, derived). How square usual work is: F-02, common practice without a source.
 */
final class MakingErrors implements Check {
    static final FindingKind MITRES = FindingKind.note("mitre-needs-care",
            "A small error of angle opens these mitres");
    static final FindingKind SQUARE = FindingKind.note("square-needed",
            "An opening has to be squarer than usual");

    @Override
    public List<FindingKind> kinds() {
        return List.of(MITRES, SQUARE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        List<Finding> findings = new ArrayList<>();
        frames(joined).forEach(frame -> mitres(frame, settings).ifPresent(findings::add));
        for (Panels.Held panel : Panels.of(joined)) {
            square(panel, settings).ifPresent(findings::add);
        }
        return findings;
    }

    /** The mitres of each frame: those that hang together over their parts. */
    private static Collection<List<MadeJoint>> frames(Joined joined) {
        Map<String, String> frame = new HashMap<>();
        List<MadeJoint> mitres = joined.joints().stream()
                .filter(MadeJoint::mitred)
                .toList();
        for (MadeJoint made : mitres) {
            String one = root(frame, made.joint().left().name());
            frame.put(one, root(frame, made.joint().right().name()));
        }
        Map<String, List<MadeJoint>> frames = new LinkedHashMap<>();
        mitres.forEach(made -> frames
                .computeIfAbsent(root(frame, made.joint().left().name()), name -> new ArrayList<>())
                .add(made));
        return frames.values();
    }

    private static String root(Map<String, String> frame, String part) {
        String at = part;
        for (String next = frame.getOrDefault(at, at); !next.equals(at); next = frame.getOrDefault(at, at)) {
            // Halving the way keeps long chains short.
            frame.put(at, frame.getOrDefault(next, next));
            at = next;
        }
        return at;
    }

    /** The widest member of a frame of four mitres or more, whose last joint shows all the errors before it. */
    private static Optional<Finding> mitres(List<MadeJoint> mitres, Settings settings) {
        if (mitres.size() < 4) {
            return Optional.empty();
        }
        MadeJoint widest = mitres.getFirst();
        for (MadeJoint made : mitres) {
            if (across(made) > across(widest)) {
                widest = made;
            }
        }
        double error = Squareness.usualDegrees(Figures.standard());
        double gap = Squareness.lastMitreGapMm(across(widest), error, mitres.size());
        return gap > Figures.standard().value("mitre-needs-care.note")
                ? Optional.of(mitre(widest, gap, error, mitres.size(), settings))
                : Optional.empty();
    }

    private static double across(MadeJoint made) {
        Meeting meeting = made.meeting();
        return meeting.contact() instanceof BoxContact.Edge edge && meeting.endOfLeft().isPresent()
                ? meeting.left()
                        .along(Meeting.third(meeting.endOfLeft().get().axis(), edge.along()))
                        .value()
                        .toDoubleMm()
                : 0;
    }

    private static Finding mitre(MadeJoint made, double gap, double error, int corners, Settings settings) {
        return Finding.of(MITRES, made.joint().at(), "The last of these mitres shows every error of the others")
                .found("With every cut off by " + DecimalText.write(error, 2) + "°, as usual work is, the last of "
                        + corners + " corners gapes " + Amounts.fine(gap, settings) + " over a width of "
                        + Amounts.fine(across(made), settings) + "; one cut off alone opens its corner "
                        + Amounts.fine(Squareness.mitreGapMm(across(made), error), settings) + ".")
                .because(
                        "An error of angle is multiplied by the length of the cut, and the errors of all corners add up"
                                + " in the last (derived). Good work keeps a joint within 0.65 mm (Architectural Woodwork"
                                + " Standards 2009, 6.1.21).")
                .about(made.joint().name())
                .number("gap", gap)
                .remedy(Remedy
                        .choice("cut both members of a corner from one setting, turned over: their errors cancel"))
                .remedy(Remedy
                        .choice("glue two halves of the frame, then shoot the last two corners to fit each other"))
                .build();
    }

    private static Optional<Finding> square(Panels.Held panel, Settings settings) {
        Part part = panel.part().part();
        double left = panel.gapMm() - panel.swellingMm();
        double width = panel.widthMm();
        double length = panel.part().length().value().toDoubleMm();
        double allowed = Squareness.diagonalsMm(width, length, Squareness.lean(left, length));
        double usual = Squareness.usualDiagonalsMm(width, length, Figures.standard());
        // Usual work often comes out better than it promises: only what asks for twice the care is worth a word.
        if (left <= 0 || allowed >= usual / 2 || part.placing().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                SQUARE, Panels.figure(panel.tightest(), "gap").at(), "The frame of `" + part.name()
                        + "` has to be squarer than usual")
                .found("Its diagonals may differ by " + Amounts.fine(allowed, settings) + " before `" + part.name()
                        + "` binds in damp air; usual work at this size holds " + Amounts.fine(usual, settings) + ".")
                .because("In a frame that leans, a square panel " + Amounts.fine(length, settings)
                        + " long has only the room"
                        + " of both its sides to stand straight (derived). Equal diagonals prove a rectangle only where"
                        + " opposite sides are equal.")
                .about(part.name())
                .number("allowed", allowed)
                .number("usual", usual)
                .remedy(Remedy.choice("measure the diagonals while the glue is wet, and pull the longer one in"))
                .remedy(Remedy.choice("make the gap larger and the grooves deeper"))
                .build());
    }
}

package dev.treen.plan;

import dev.treen.drawing.JointPicture;
import dev.treen.drawing.JointSheets;
import dev.treen.drawing.Sheet;
import dev.treen.finding.FindingKind;
import dev.treen.joinery.Figure;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JoineryFindings;
import dev.treen.joinery.JointKinds;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.model.FileLoader;
import dev.treen.model.JointSchema;
import dev.treen.model.Settings;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The reference of the joints: for each a page with what may be written, a drawing of every way in which its examples make
 * it, its numbers with their rules and sources, and its work. All of it comes from the schema and from what the compiler
 * makes of the examples.
 */
public final class JointReference {
    /** Where the sheet of all joints stands, beside the pages. */
    public static final String SHEET = "all-joints.svg";

    /** What may be said of a joint of any kind. */
    private static final List<FindingKind> OF_ANY = List.of(
            JoineryFindings.NEEDS_PLACE, JoineryFindings.DO_NOT_MEET, JoineryFindings.MEETS_WRONGLY,
            JoineryFindings.OVERLAP, JoineryFindings.NOTHING_SEEN, JoineryFindings.DOES_NOT_FIT);

    private final Map<String, Compilation> examples = new LinkedHashMap<>();
    private final List<JointSheets.Sample> samples = new ArrayList<>();
    private final JointFindings findings = new JointFindings();
    private final Map<String, String> files = new LinkedHashMap<>();

    private JointReference(Map<String, String> texts) {
        texts.forEach((name, text) -> examples.put(name, Compilation.of(new SourceFile(name, text), FileLoader.NONE)));
    }

    /**
     * All files of the reference by their names.
     *
     * @param examples texts of small projects by file name; one belongs to the joint that it is named for, or else to the
     *     first that it has
     */
    public static Map<String, String> files(Map<String, String> examples) {
        JointReference reference = new JointReference(examples);
        JointKinds.schemas().forEach(reference::page);
        reference.sheet();
        return reference.files;
    }

    /** The example that is named for a joint comes first. */
    private List<String> examples(String kind) {
        List<String> names = new ArrayList<>();
        examples.forEach((name, compilation) -> {
            if (name.equals(kind + ".treen")) {
                names.addFirst(name);
            } else if (JointKinds.named(name.replace(".treen", "")).isEmpty() && first(compilation).equals(kind)) {
                names.add(name);
            }
        });
        return names;
    }

    private static String first(Compilation compilation) {
        return compilation.joined().joints().stream().findFirst().map(m -> m.joint().kind()).orElse("");
    }

    private Joined joined(String example) {
        return Optional.ofNullable(examples.get(example)).orElseThrow().joined();
    }

    /** Of each statement of the kind the first pair. */
    private static List<MadeJoint> statements(Joined joined, String kind) {
        Set<Integer> seen = new LinkedHashSet<>();
        return joined.joints().stream()
                .filter(m -> m.joint().kind().equals(kind) && seen.add(m.joint().statement()))
                .toList();
    }

    /** What the trade calls the form in which a joint is made there: the line of comment over its statement. */
    private String form(String example, MadeJoint made) {
        SourceFile file = Optional.ofNullable(examples.get(example)).orElseThrow().file();
        int before = made.joint().kindAt().line() - 2;
        String above = before < 0 ? "" : file.lineText(before).strip();
        return above.startsWith("// ") ? above.substring(3) : "";
    }

    private void page(JointSchema schema) {
        String kind = schema.kind();
        List<String> lines = new ArrayList<>(List.of("# " + kind, "", LanguageReference.form(schema)
                + schema.block().doc(), ""));
        List<MadeJoint> shown = new ArrayList<>();
        List<Settings> settings = new ArrayList<>();
        for (String example : examples(kind)) {
            Joined joined = joined(example);
            for (MadeJoint made : statements(joined, kind)) {
                JointPicture.of(joined, made).ifPresent(picture -> {
                    String form = form(example, made);
                    samples.add(new JointSheets.Sample(kind, form, picture));
                    picture(kind, form, JointSheets.of(picture), shown.size() + 1, made, lines);
                });
                shown.add(made);
                settings.add(joined.project().settings());
            }
        }
        lines.add("## What may be written");
        LanguageReference.uses(schema.block(), lines);
        for (int i = 0; i < shown.size(); i++) {
            numbers(settings.get(i), shown, i, lines);
        }
        if (!shown.isEmpty()) {
            work(shown, lines);
            watched(kind, lines);
            lines.addAll(List.of("", "## The example", ""));
            examples(kind).forEach(example -> lines.addAll(List.of(
                    "[" + example + "](../../examples/joints/" + example + "), invented for this page:", "", "```treen",
                    Optional.ofNullable(examples.get(example)).orElseThrow().file().text().strip(), "```", "")));
        }
        lines.add("Back to [all joints](README.md). This page is made from the schema and the example;"
                + " `-Dtreen.update=true` makes it anew.");
        files.put(kind + ".md", String.join("\n", lines) + "\n");
    }

    private void picture(
            String kind, String form, Sheet sheet, int number, MadeJoint made, List<String> lines) {
        String name = kind + (number == 1 ? "" : "-" + number) + ".svg";
        files.put(name, sheet.svg());
        if (!form.isEmpty()) {
            lines.addAll(List.of("**" + form + "**", ""));
        }
        lines.addAll(List.of("![" + sheet.title() + ", apart and together](" + name + ")", "",
                "`" + statement(made) + "`", ""));
    }

    /** How a pair would be written by itself. */
    private static String statement(MadeJoint made) {
        var joint = made.joint();
        StringBuilder settings = new StringBuilder();
        joint.settings().values().stream()
                .sorted(java.util.Comparator.comparingInt(s -> s.nameAt().start()))
                .forEach(s -> settings.append(settings.isEmpty() ? " { " : s.name().contains(".") ? " " : "; ")
                        .append(s.nameAt().text())
                        .append(' ')
                        .append(s.valueAt().text()));
        return "joint " + joint.kind() + " " + joint.left().name() + (joint.into() ? " into " : " to ")
                + joint.right().name() + settings + (settings.isEmpty() ? "" : " }");
    }

    private void numbers(Settings settings, List<MadeJoint> shown, int at, List<String> lines) {
        MadeJoint made = shown.get(at);
        if (made.figures().isEmpty()) {
            return;
        }
        lines.addAll(List.of("", "## Its numbers" + (shown.size() == 1 ? "" : ", " + (at + 1)), "", "`"
                + statement(made) + "`", "", "| number | here | where it comes from |", "| --- | --- | --- |"));
        LengthFormat format = new LengthFormat.Metric(2);
        for (Figure figure : made.figures()) {
            String[] first = Explanation.of(figure.measure().how(), settings).lines().findFirst().orElse("")
                    .split("  ←  ", 2);
            lines.add("| `" + figure.name() + "` | " + format.text(figure.measure().value()) + " | "
                    + LanguageReference.cell(first[first.length - 1]) + " |");
        }
    }

    private void watched(String kind, List<String> lines) {
        lines.addAll(List.of("", "## What Treen says when something is wrong", ""));
        List<FindingKind> found = findings.of(kind).stream().filter(finding -> !OF_ANY.contains(finding)).toList();
        found.forEach(finding -> lines.add("- " + link(finding) + ": " + finding.title() + " ("
                + finding.severity().word() + ")"));
        if (!found.isEmpty()) {
            lines.add("");
        }
        lines.add("Of any joint: " + OF_ANY.stream().map(JointReference::link).collect(Collectors.joining(", ")) + ".");
    }

    private static String link(FindingKind finding) {
        return "[" + finding.code() + "](../FINDINGS.md#" + finding.code() + ")";
    }

    /** The work of the first form, and of each other what has not been told. */
    private static void work(List<MadeJoint> shown, List<String> lines) {
        if (shown.getFirst().works().isEmpty()) {
            return;
        }
        lines.addAll(List.of("", "## At the bench", ""));
        Set<List<String>> told = new LinkedHashSet<>();
        for (int i = 0; i < shown.size(); i++) {
            List<Work> works = shown.get(i).works().stream().filter(work -> told.add(told(work))).toList();
            if (i > 0 && !works.isEmpty()) {
                lines.addAll(List.of("", "Of `" + statement(shown.get(i)) + "`:", ""));
            }
            works.forEach(work -> lines.add(step(work)));
        }
        lines.addAll(List.of("",
                "Sharp tools and machines hurt people: follow the makers' instructions, and make a test"
                        + " joint in an offcut. What carries people or hangs over them falls under local codes and belongs before"
                        + " somebody licensed to judge it."));
    }

    /** By what a piece of work is the same as another of its kind, whichever parts it is done to. */
    private static List<String> told(Work work) {
        return List.of(work.stage().name(), work.tool(), work.from(), work.check());
    }

    private static String step(Work work) {
        String tool = work.tool().isEmpty() ? "" : " (" + work.tool() + ")";
        String from = work.from().isEmpty() ? "" : " From: " + work.from() + ".";
        String look = work.check().isEmpty() ? "" : " Look: " + work.check() + ".";
        String care = work.caution().isEmpty() ? "" : " **" + work.caution() + "**";
        return "1. " + work.action() + tool + "." + from + look + care;
    }

    private void sheet() {
        List<String> lines = new ArrayList<>(List.of("# All joints", "",
                "![One picture of each form of each joint, its parts apart]("
                        + SHEET + ")",
                "", "Each has a page with what may be written, drawings, its numbers with the rules and"
                        + " sources they come from, and its work. All drawings are made by Treen from the projects in"
                        + " [examples/joints](../../examples/joints), which are invented. What a joint cuts is darker;"
                        + " dashed lines lie inside.",
                "", "| joint | what it does |", "| --- | --- |"));
        for (JointSchema schema : JointKinds.schemas()) {
            String kind = schema.kind();
            lines.add("| [" + kind + "](" + kind + ".md) | " + LanguageReference.cell(schema.block().doc()) + " |");
        }
        files.put(SHEET, JointSheets.all(samples).svg());
        files.put("README.md", String.join("\n", lines) + "\n");
    }
}

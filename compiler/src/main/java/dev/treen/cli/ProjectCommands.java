package dev.treen.cli;

import dev.treen.check.Checks;
import dev.treen.cutting.BoardCut;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.NearWords;
import dev.treen.joinery.Figure;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Derivation;
import dev.treen.plan.Compilation;
import dev.treen.plan.CutListCsv;
import dev.treen.plan.Explanation;
import dev.treen.plan.FindingText;
import dev.treen.plan.LayoutSvg;
import dev.treen.plan.OrderMarkdown;
import dev.treen.plan.Plan;
import dev.treen.plan.PlanJson;
import dev.treen.plan.PlanText;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The commands that read a project: build, check, explain. */
final class ProjectCommands {
    private static final int FINE = 0;
    private static final int ERRORS = 1;

    private final Subcommand.Streams streams;
    private final boolean colour;

    ProjectCommands(Subcommand.Streams streams, boolean colour) {
        this.streams = streams;
        this.colour = colour;
    }

    private Optional<Compilation> compiled(String name) {
        return switch (ProjectFiles.read(name)) {
            case ProjectFiles.Read.Found(SourceFile file) -> Optional.of(Compilation.of(file, new ProjectFiles()));
            case ProjectFiles.Read.Refused(String why) -> {
                streams.err().println("error file-not-read  " + why);
                yield Optional.empty();
            }
        };
    }

    int build(List<String> arguments) {
        Optional<String> folder = Optional.empty();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < arguments.size(); i++) {
            String each = arguments.get(i);
            if (each.equals("-o") && i + 1 < arguments.size()) {
                folder = Optional.of(arguments.get(++i));
            } else if (each.startsWith("-")) {
                return wrongUse("unknown option " + each, "treen build FILE [-o FOLDER]");
            } else {
                names.add(each);
            }
        }
        if (names.size() != 1) {
            return wrongUse("build wants one project file", "treen build FILE [-o FOLDER]");
        }
        Optional<Compilation> compilation = compiled(names.getFirst());
        return compilation.isEmpty() ? ERRORS : build(names.getFirst(), compilation.get(), folder);
    }

    private int build(String name, Compilation compilation, Optional<String> folder) {
        if (Compilation.hasErrors(compilation.checked().findings())) {
            streams.err().print(new FindingText(colour).of(compilation.checked().findings()));
            streams.err().println("Nothing was written.");
            return ERRORS;
        }
        Plan plan = compilation.plan();
        if (!plan.findings().isEmpty()) {
            streams.err().print(new FindingText(colour).of(plan.findings()));
        }
        if (Compilation.hasErrors(plan.findings())) {
            streams.err().println("Nothing was written.");
            return ERRORS;
        }
        streams.out().print(PlanText.of(plan));
        Path into = folder.map(Path::of).orElseGet(() -> beside(name));
        Optional<String> refused = new OutputFolder(into).write(files(plan));
        if (refused.isPresent()) {
            streams.err().println("error output-not-written  " + refused.get());
            return ERRORS;
        }
        streams.out().println();
        streams.out().println("Written to " + into + ": " + String.join(", ", files(plan).keySet()));
        return FINE;
    }

    private static Path beside(String name) {
        Path file = Path.of(name);
        String plain = String.valueOf(file.getFileName());
        String stem = plain.endsWith(".treen") ? plain.substring(0, plain.length() - ".treen".length()) : plain;
        return file.resolveSibling(stem + "-plan");
    }

    private static Map<String, String> files(Plan plan) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("cut-list.csv", CutListCsv.of(plan));
        files.put("plan.json", PlanJson.of(plan));
        files.put("order.md", OrderMarkdown.of(plan));
        for (BoardCut board : plan.cutting().boards()) {
            files.put("layout-" + board.name().replace(' ', '-') + ".svg", LayoutSvg.of(plan, board));
        }
        return files;
    }

    int check(List<String> arguments) {
        String format = "text";
        List<String> names = new ArrayList<>();
        for (int i = 0; i < arguments.size(); i++) {
            String each = arguments.get(i);
            if (each.equals("--format") && i + 1 < arguments.size()) {
                format = arguments.get(++i);
            } else if (each.startsWith("-")) {
                return wrongUse("unknown option " + each, "treen check FILE [--format text|json]");
            } else {
                names.add(each);
            }
        }
        if (names.size() != 1 || !(format.equals("text") || format.equals("json"))) {
            return wrongUse("check wants one project file", "treen check FILE [--format text|json]");
        }
        Optional<Compilation> compilation = compiled(names.getFirst());
        if (compilation.isEmpty()) {
            return ERRORS;
        }
        List<Finding> findings = compilation.get().checked().findings();
        streams.out()
                .print(format.equals("json") ? PlanJson.of(findings) : new FindingText(colour).of(findings));
        return Compilation.hasErrors(findings) ? ERRORS : FINE;
    }

    int explain(List<String> arguments) {
        if (arguments.size() == 1) {
            return explainCode(arguments.getFirst());
        }
        if (arguments.size() != 2) {
            return wrongUse("explain wants a file and a name, or a code", "treen explain FILE NAME");
        }
        Optional<Compilation> compilation = compiled(arguments.get(0));
        if (compilation.isEmpty()) {
            return ERRORS;
        }
        Map<String, Derivation> known = explainable(compilation.get());
        String name = arguments.get(1);
        LengthFormat format = compilation.get().evaluation().project().settings().format();
        List<Derivation> matching = known.entrySet().stream()
                .filter(k -> k.getKey().equals(name) || k.getKey().startsWith(name + "."))
                .map(Map.Entry::getValue)
                .toList();
        if (matching.isEmpty()) {
            List<String> near = NearWords.of(name, known.keySet());
            streams.err().println("error unknown-name  Nothing is called `" + name + "`"
                    + (near.isEmpty() ? "" : "; near is " + NearWords.quoted(near)));
            return ERRORS;
        }
        for (Derivation each : matching) {
            streams.out().println(Explanation.of(each, format));
            streams.out().println();
        }
        return FINE;
    }

    private static Map<String, Derivation> explainable(Compilation compilation) {
        Map<String, Derivation> known = new LinkedHashMap<>();
        for (FinishedPart part : compilation.checked().joined().parts()) {
            String name = part.part().name();
            known.put(name + ".length", part.length().how());
            known.put(name + ".width", part.width().how());
            known.put(name + ".thickness", part.thickness().how());
            known.put(name + ".rough.length", part.roughLength().how());
            known.put(name + ".rough.width", part.roughWidth().how());
        }
        for (MadeJoint joint : compilation.checked().joined().joints()) {
            for (Figure figure : joint.figures()) {
                known.put(
                        joint.joint().name() + "." + figure.name(),
                        figure.measure().how());
                known.putIfAbsent(
                        joint.joint().left().name() + "." + figure.name(),
                        figure.measure().how());
            }
        }
        compilation.evaluation().usages().forEach(u -> known.putIfAbsent(u.at().text(), u.value().how()));
        return known;
    }

    private int explainCode(String code) {
        Optional<FindingKind> kind = Checks.kinds().stream().filter(k -> k.code().equals(code)).findFirst();
        if (kind.isEmpty()) {
            return wrongUse(
                    "there is no finding called " + code, "treen explain FILE NAME, or treen explain CODE");
        }
        streams.out().println(kind.get().severity().word() + " " + code + ": " + kind.get().title() + ".");
        return FINE;
    }

    private int wrongUse(String what, String usage) {
        streams.err().println("treen: " + what);
        streams.err().println("Use: " + usage);
        return Main.WRONG_USE;
    }
}

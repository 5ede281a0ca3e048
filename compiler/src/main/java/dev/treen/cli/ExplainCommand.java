package dev.treen.cli;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.NearWords;
import dev.treen.joinery.Figure;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GlueFaces;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Usage;
import dev.treen.order.Step;
import dev.treen.plan.Compilation;
import dev.treen.plan.Explanation;
import dev.treen.plan.GlueText;
import dev.treen.plan.StepReasons;
import dev.treen.plan.YearText;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/** {@code treen explain}: how a number of a project came about, or what the code of a finding means. */
final class ExplainCommand implements Subcommand {
    private static final String USAGE = "treen explain FILE NAME " + UnitsOption.USAGE
            + ", treen explain FILE --step N, treen explain CODE, or treen explain for all codes";

    private static final String STEP = "--step";

    @Override
    public String name() {
        return "explain";
    }

    @Override
    public String summary() {
        return "say how a number came about, or what a finding's code means";
    }

    @Override
    public int run(List<String> given, Streams streams) {
        Arguments arguments = Arguments.read(given, Set.of(UnitsOption.NAME, STEP));
        if (arguments.help()) {
            streams.out().println("usage: " + USAGE);
            streams.out().println(UnitsOption.HELP);
            streams.out().println("With --step it says why a step of the order stands where it does.");
            return 0;
        }
        if (arguments.wrong().isPresent()) {
            return Terminal.wrongUse(streams, arguments.wrong().get(), USAGE);
        }
        if (UnitsOption.wrong(arguments).isPresent()) {
            return Terminal.wrongUse(streams, UnitsOption.wrong(arguments).get(), USAGE);
        }
        List<String> names = arguments.names();
        if (arguments.option(STEP).isPresent()) {
            return names.size() == 1
                    ? compiled(names.getFirst(), UnitsOption.of(arguments), streams,
                            compilation -> step(compilation, arguments.option(STEP).get(), streams))
                    : Terminal.wrongUse(streams, "explain --step wants one file", USAGE);
        }
        return switch (names.size()) {
            case 0 -> codes(streams);
            case 1 -> code(names.getFirst(), streams);
            case 2 -> number(names.get(0), names.get(1), UnitsOption.of(arguments), streams);
            default -> Terminal.wrongUse(streams, "explain wants a file and a name, or a code", USAGE);
        };
    }

    private static int codes(Streams streams) {
        List<FindingKind> kinds = FindingCatalogue.kinds();
        int wide = kinds.stream().mapToInt(kind -> kind.code().length()).max().orElse(0);
        for (FindingKind kind : kinds) {
            streams.out().println(
                    padded(kind.code(), wide) + "  " + padded(kind.severity().word(), "warning".length()) + "  "
                            + kind.title());
        }
        return 0;
    }

    private static String padded(String text, int wide) {
        return text + " ".repeat(Math.max(0, wide - text.length()));
    }

    private static int code(String code, Streams streams) {
        List<FindingKind> kinds = FindingCatalogue.kinds();
        for (FindingKind kind : kinds) {
            if (kind.code().equals(code)) {
                streams.out().print(FindingCatalogue.page(kind).plain());
                return 0;
            }
        }
        List<String> near = NearWords.of(code, kinds.stream().map(FindingKind::code).toList());
        return Terminal.wrongUse(
                streams,
                "there is no finding called " + code
                        + (near.isEmpty() ? "" : "; near is " + String.join(", ", near)),
                USAGE);
    }

    private static int number(String file, String name, Optional<LengthFormat> shown, Streams streams) {
        return compiled(file, shown, streams, compilation -> number(compilation, name, streams));
    }

    private static int compiled(
            String file, Optional<LengthFormat> shown, Streams streams, ToIntFunction<Compilation> then) {
        return switch (ProjectFiles.read(file)) {
            case ProjectFiles.Read.Found(SourceFile found) ->
                then.applyAsInt(Compilation.of(found, new ProjectFiles(), shown));
            case ProjectFiles.Read.Refused(String why) -> {
                Finding finding = CommandFindings.of(CommandFindings.NOT_READ, file, why);
                streams.err().print(Terminal.text(List.of(finding)));
                yield 1;
            }
        };
    }

    private static int step(Compilation compilation, String number, Streams streams) {
        int count = compilation.order().steps().size();
        Optional<Step> step = compilation.order().steps().stream()
                .filter(each -> String.valueOf(each.number()).equals(number))
                .findFirst();
        if (step.isEmpty()) {
            return Terminal.wrongUse(
                    streams,
                    "there is no step " + number
                            + (count == 0 ? "; the project has none" : "; steps go from 1 to " + count),
                    USAGE);
        }
        streams.out().print(StepReasons.of(
                step.get(), compilation.order(), compilation.evaluation().project().settings().format()));
        return 0;
    }

    private static int number(Compilation compilation, String name, Streams streams) {
        Map<String, Derivation> known = explainable(compilation);
        List<Derivation> matching = known.entrySet().stream()
                .filter(k -> k.getKey().equals(name) || k.getKey().startsWith(name + "."))
                .map(Map.Entry::getValue)
                .toList();
        List<GlueFaces> touching = GlueFaces.of(compilation.joined()).stream()
                .filter(faces -> isOf(faces, name))
                .toList();
        if (matching.isEmpty() && touching.isEmpty()) {
            List<String> near = NearWords.of(name, known.keySet());
            streams.err().println("error unknown-name  Nothing is called `" + name + "`"
                    + (near.isEmpty() ? "" : "; near is " + NearWords.quoted(near)));
            return 1;
        }
        LengthFormat format = compilation.evaluation().project().settings().format();
        for (Derivation each : matching) {
            streams.out().println(Explanation.of(each, compilation.evaluation().project().settings()));
            streams.out().println();
        }
        touching.forEach(faces -> streams.out().println(GlueText.of(faces, format)));
        if (!touching.isEmpty()) {
            streams.out().println();
        }
        compilation.checked().facts().years().stream()
                .filter(year -> name.equals(year.part()) || name.equals(year.part() + ".gap"))
                .forEach(year -> {
                    streams.out().println(YearText.of(year, format));
                    streams.out().println();
                });
        return 0;
    }

    /** Whether the faces of a joint are asked about: by its name, or by that of a part that enters it. */
    private static boolean isOf(GlueFaces faces, String name) {
        return List.of(faces.made().joint().name(), faces.made().joint().name() + ".faces",
                faces.made().joint().left().name()).contains(name);
    }

    private static Map<String, Derivation> explainable(Compilation compilation) {
        Map<String, Derivation> known = new LinkedHashMap<>();
        for (FinishedPart part : compilation.joined().parts()) {
            String name = part.part().name();
            known.put(name + ".length", part.length().how());
            known.put(name + ".width", part.width().how());
            known.put(name + ".thickness", part.thickness().how());
            if (part.part().bought().isPresent()) {
                continue;
            }
            known.put(name + ".rough.length", part.roughLength().how());
            known.put(name + ".rough.width", part.roughWidth().how());
            known.put(name + ".rough.thickness", part.roughThickness().how());
        }
        for (FinishedPart part : compilation.joined().parts()) {
            String name = part.part().name();
            compilation.checked().facts().fact(name, "mass").ifPresent(mass -> known.put(name + ".mass", mass.how()));
        }
        for (MadeJoint joint : compilation.joined().joints()) {
            for (Figure figure : joint.figures()) {
                Derivation how = figure.measure().how();
                known.put(joint.joint().name() + "." + figure.name(), how);
                known.putIfAbsent(joint.joint().left().name() + "." + figure.name(), how);
            }
        }
        List<Usage> usages = compilation.evaluation().usages();
        // A name in a way that is not taken has no value of its own there.
        usages.stream().filter(u -> !(u.value().value() instanceof Datum.Unknown))
                .forEach(u -> known.putIfAbsent(u.at().text(), u.value().how()));
        usages.forEach(u -> known.putIfAbsent(u.at().text(), u.value().how()));
        return known;
    }
}

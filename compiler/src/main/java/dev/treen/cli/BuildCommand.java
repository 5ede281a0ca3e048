package dev.treen.cli;

import dev.treen.check.RoomYear;
import dev.treen.cutting.BoardCut;
import dev.treen.drawing.DrawingSet;
import dev.treen.drawing.Drawings;
import dev.treen.drawing.Figures;
import dev.treen.drawing.Outlines;
import dev.treen.drawing.PaperSize;
import dev.treen.drawing.Sheet;
import dev.treen.drawing.Templates;
import dev.treen.export.Dxf;
import dev.treen.export.Gltf;
import dev.treen.finding.Finding;
import dev.treen.page.Labels;
import dev.treen.page.PlanMarkdown;
import dev.treen.page.PlanPage;
import dev.treen.page.ShoppingCsv;
import dev.treen.page.Sources;
import dev.treen.page.StepPictures;
import dev.treen.page.TemplatePages;
import dev.treen.plan.Compilation;
import dev.treen.plan.CutListCsv;
import dev.treen.plan.LayoutSvg;
import dev.treen.plan.OrderMarkdown;
import dev.treen.plan.Plan;
import dev.treen.plan.PlanJson;
import dev.treen.plan.PlanText;
import dev.treen.plan.RackText;
import dev.treen.plan.YearSvg;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.jsoup.nodes.Document;

/** {@code treen build}: prints the plan, and writes its files whole or not at all. */
final class BuildCommand implements Subcommand {
    private static final String USAGE = "treen build FILE [-o FOLDER] " + UnitsOption.USAGE + " " + PaperOption.USAGE;

    private final Optional<Course> told;

    /** Says on the terminal how it goes, where there is one. */
    BuildCommand() {
        told = Optional.empty();
    }

    /** Says to {@code told} how it goes, and stops where that wants it to. */
    BuildCommand(Course told) {
        this.told = Optional.of(told);
    }

    @Override
    public String name() {
        return "build";
    }

    @Override
    public String summary() {
        return "check a project, and write its cut list, layouts and order of work";
    }

    @Override
    public int run(List<String> given, Streams streams) {
        Arguments arguments = Arguments.read(given, Set.of("-o", UnitsOption.NAME, PaperOption.NAME));
        if (arguments.help()) {
            streams.out().println("usage: " + USAGE);
            streams.out().println(
                    "Writes into FOLDER, or into NAME-plan beside the project. A plan that stands there already is");
            streams.out().println("changed no more than it must: parts stay on their boards, and what moves is said.");
            streams.out().println(UnitsOption.HELP);
            streams.out().println(PaperOption.HELP);
            return 0;
        }
        if (arguments.wrong().isPresent()) {
            return Terminal.wrongUse(streams, arguments.wrong().get(), USAGE);
        }
        if (arguments.names().size() != 1) {
            return Terminal.wrongUse(streams, "build wants one project file", USAGE);
        }
        Optional<String> wrong = UnitsOption.wrong(arguments).or(() -> PaperOption.wrong(arguments));
        if (wrong.isPresent()) {
            return Terminal.wrongUse(streams, wrong.get(), USAGE);
        }
        String name = arguments.names().getFirst();
        Path into;
        try {
            into = arguments.option("-o").map(Path::of).orElseGet(() -> OutputNames.beside(Path.of(name)));
        } catch (InvalidPathException impossible) {
            return Terminal.wrongUse(streams, "no folder can have that name", USAGE);
        }
        return switch (ProjectFiles.read(name)) {
            case ProjectFiles.Read.Found(SourceFile file) -> {
                Sources.Recorder files = recorder(file);
                Compilation compilation = Compilation.of(
                        files.main(), files, UnitsOption.of(arguments), EarlierPlan.in(into));
                Course course = told.orElseGet(() -> Terminal.course(streams));
                yield finished(made(compilation, files, arguments, course), into, streams);
            }
            case ProjectFiles.Read.Refused(String why) ->
                nothing(List.of(CommandFindings.of(CommandFindings.NOT_READ, name, why)), streams);
        };
    }

    /** A plan that Treen wrote holds its project; any other file is one. */
    private static Sources.Recorder recorder(SourceFile file) {
        Optional<Sources> inside = page(file.name()) ? Sources.in(file.text()) : Optional.empty();
        return inside.map(sources -> new Sources.Recorder(sources.main(), sources.loader()))
                .orElseGet(() -> new Sources.Recorder(file, new ProjectFiles()));
    }

    private static boolean page(String name) {
        return name.endsWith(".html") || name.endsWith(".htm");
    }

    /** What a build comes to. */
    private sealed interface Made {
        /** All files, and why there is no PDF among them where one was wanted. */
        record Whole(Plan plan, Map<String, byte[]> files, Optional<String> noPdf) implements Made {}

        /** Findings that no plan can be made with. */
        record Not(List<Finding> why) implements Made {}

        /** Whoever waited has had enough. */
        record Stopped() implements Made {}
    }

    private static Made made(
            Compilation compilation, Sources.Recorder sources, Arguments arguments, Course course) {
        try {
            return steps(compilation, sources, arguments, course);
        } catch (CancellationException stopped) {
            return new Made.Stopped();
        } finally {
            course.ends();
        }
    }

    private static Made steps(
            Compilation compilation, Sources.Recorder sources, Arguments arguments, Course course) {
        begin("checking the project", course);
        List<Finding> early = compilation.checked().findings();
        if (!Compilation.onlyWoodMissing(early)) {
            return new Made.Not(compilation.findings());
        }
        begin("laying out boards", course);
        compilation.cutting(course::stands, course::isStopped);
        begin("seeking the order of work", course);
        Plan plan = compilation.plan();
        if (!Compilation.onlyWoodMissing(plan.findings())) {
            return new Made.Not(plan.findings());
        }
        begin("drawing the parts", course);
        Optional<LengthFormat> beside = UnitsOption.beside(arguments, plan);
        DrawingSet drawings = Drawings.all(plan.joined(), new Figures(plan.format(), beside));
        begin("writing the plan", course);
        List<RoomYear> years = compilation.checked().facts().years();
        Document page = PlanPage.document(
                plan, years, drawings, sources.sources(), beside);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files(plan, years, drawings, page)
                .forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        begin("laying the plan on paper", course);
        Optional<String> noPdf = PaperOption.write(arguments, plan, page, files);
        goOn(course);
        return new Made.Whole(plan, files, noPdf);
    }

    private static void begin(String step, Course course) {
        course.begins(step);
        goOn(course);
    }

    private static void goOn(Course course) {
        if (course.isStopped()) {
            throw new CancellationException();
        }
    }

    private static int finished(Made made, Path into, Streams streams) {
        return switch (made) {
            case Made.Not(List<Finding> why) -> nothing(why, streams);
            case Made.Stopped() -> {
                streams.err().println("Stopped before the plan was whole. Nothing was written.");
                yield 1;
            }
            case Made.Whole whole -> written(whole, into, streams);
        };
    }

    private static int written(Made.Whole whole, Path into, Streams streams) {
        Plan plan = whole.plan();
        Optional<String> refused = new OutputFolder(into).write(whole.files());
        if (refused.isPresent()) {
            Finding finding = CommandFindings.of(CommandFindings.NOT_WRITTEN, into.toString(), refused.get());
            return nothing(List.of(finding), streams);
        }
        if (!plan.findings().isEmpty()) {
            streams.err().print(Terminal.text(plan.findings()));
        }
        whole.noPdf().ifPresent(why -> streams.err().println("plan.pdf is not among the files: " + why));
        streams.out().print(PlanText.of(plan));
        streams.out().println();
        streams.out().println("Written to " + into + ": " + String.join(", ", whole.files().keySet()));
        if (Compilation.hasErrors(plan.findings())) {
            streams.err().println("The plan is written, without the parts for which there is no wood.");
            return 1;
        }
        return 0;
    }

    private static int nothing(List<Finding> findings, Streams streams) {
        streams.err().print(Terminal.text(findings));
        streams.err().println("Nothing was written.");
        return 1;
    }

    private static Map<String, String> files(Plan plan, List<RoomYear> years, DrawingSet drawings, Document page) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("plan.html", PlanPage.text(page));
        files.put("labels.html", Labels.of(plan));
        files.put("cut-list.csv", CutListCsv.of(plan));
        files.put("shopping.csv", ShoppingCsv.of(plan));
        files.put("plan.json", PlanJson.of(plan));
        files.put("order.md", OrderMarkdown.of(plan));
        // By the addresses that the drawings have in the page.
        Map<String, String> shown = new HashMap<>();
        for (BoardCut board : plan.cutting().boards()) {
            String name = fresh(OutputNames.layout(board), ".svg", files);
            files.put(name, LayoutSvg.of(plan.joined(), board));
            shown.put(PlanPage.layout(shown.size() + 1), name);
        }
        if (!years.isEmpty()) {
            files.put("year.svg", YearSvg.of(plan, years));
            // One file for all of them, where the page has one each.
            shown.put("year-1-title", "year.svg");
        }
        drawings.sheets().forEach((sheet, drawn) -> {
            String name = fresh(OutputNames.stem(sheet), ".svg", files);
            files.put(name, drawn.svg());
            PlanPage.drawing(drawings, sheet).ifPresent(address -> shown.put(address, name));
        });
        for (StepPictures.Picture each : StepPictures.of(page)) {
            String name = fresh("step-" + each.step(), ".svg", files);
            files.put(name, each.svg());
            shown.put(each.address(), name);
        }
        files.put("plan.md", PlanMarkdown.of(page, shown));
        Outlines.of(plan.joined())
                .forEach((name, part) -> files.put(fresh(OutputNames.stem(name), ".dxf", files), Dxf.of(part)));
        List<Sheet> templates = Templates.of(plan.joined());
        if (!templates.isEmpty()) {
            files.put("templates-a4.html", TemplatePages.of(plan.title(), templates, PaperSize.A4));
            files.put("templates-letter.html", TemplatePages.of(plan.title(), templates, PaperSize.LETTER));
        }
        Gltf.of(plan.joined()).ifPresent(assembly -> files.put("assembly.gltf", assembly));
        String rack = RackText.of(plan);
        if (!rack.isEmpty()) {
            files.put("rack.treen", rack);
        }
        return files;
    }

    /** Some file systems take {@code A} and {@code a} for the same name. */
    private static String fresh(String stem, String ending, Map<String, String> files) {
        String name = stem + ending;
        for (int i = 2; taken(name, files); i++) {
            name = stem + "-" + i + ending;
        }
        return name;
    }

    private static boolean taken(String name, Map<String, String> files) {
        String lower = name.toLowerCase(Locale.ROOT);
        return files.keySet().stream().anyMatch(each -> each.toLowerCase(Locale.ROOT).equals(lower));
    }
}

package dev.treen.cli;

import dev.treen.finding.Finding;
import dev.treen.plan.Compilation;
import dev.treen.plan.PlanJson;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** {@code treen check}: prints what is to be said of a project, with the lines concerned. */
final class CheckCommand implements Subcommand {
    private static final String USAGE = "treen check FILE [--format text|json] " + UnitsOption.USAGE;
    private static final String FORMAT = "--format";

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String summary() {
        return "say what is wrong with a project";
    }

    @Override
    public int run(List<String> given, Streams streams) {
        Arguments arguments = Arguments.read(given, Set.of(FORMAT, UnitsOption.NAME));
        if (arguments.help()) {
            streams.out().println("usage: " + USAGE);
            streams.out().println("Ends with 1 where there are errors.");
            streams.out().println(UnitsOption.HELP);
            return 0;
        }
        if (arguments.wrong().isPresent()) {
            return Terminal.wrongUse(streams, arguments.wrong().get(), USAGE);
        }
        if (arguments.names().size() != 1) {
            return Terminal.wrongUse(streams, "check wants one project file", USAGE);
        }
        String format = arguments.option(FORMAT).orElse("text");
        if (!format.equals("text") && !format.equals("json")) {
            return Terminal.wrongUse(streams, "there is no format " + format, USAGE);
        }
        if (UnitsOption.wrong(arguments).isPresent()) {
            return Terminal.wrongUse(streams, UnitsOption.wrong(arguments).get(), USAGE);
        }
        List<Finding> findings = findings(arguments.names().getFirst(), UnitsOption.of(arguments));
        streams.out().print(format.equals("json") ? PlanJson.of(findings) : Terminal.text(findings));
        return Compilation.hasErrors(findings) ? 1 : 0;
    }

    private static List<Finding> findings(String name, Optional<LengthFormat> shown) {
        return switch (ProjectFiles.read(name)) {
            case ProjectFiles.Read.Found(SourceFile file) -> Compilation.of(file, new ProjectFiles(), shown).findings();
            case ProjectFiles.Read.Refused(String why) ->
                List.of(CommandFindings.of(CommandFindings.NOT_READ, name, why));
        };
    }
}

package dev.treen.cli;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Formatter;
import dev.treen.syntax.Parser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** {@code treen format}: puts files into the one style, or says which are not in it. */
final class FormatCommand implements Subcommand {
    private static final String USAGE = "treen format FILE... [--check]";
    private static final String CHECK = "--check";
    private static final String STANDARD_STREAMS = "-";

    @Override
    public String name() {
        return "format";
    }

    @Override
    public String summary() {
        return "put files into the one style";
    }

    @Override
    public int run(List<String> given, Streams streams) {
        Arguments arguments = Arguments.read(given, Set.of(), Set.of(CHECK));
        if (arguments.help()) {
            streams.out().println("usage: " + USAGE);
            streams.out().println("""
                    Writes a file only where its style is another, whole or not at all, and names it. Blanks,
                    line ends and semicolons change, nothing else; lines that cannot be read stay as they are.
                    With - it reads standard input and writes standard output.
                    With --check it writes nothing, names the files that are in another style, and ends with 1
                    where there are any.""");
            return 0;
        }
        if (arguments.wrong().isPresent()) {
            return Terminal.wrongUse(streams, arguments.wrong().get(), USAGE);
        }
        Set<String> names = new LinkedHashSet<>(arguments.names());
        if (names.isEmpty()) {
            return Terminal.wrongUse(streams, "format wants one file or more", USAGE);
        }
        boolean check = arguments.option(CHECK).isPresent();
        if (names.contains(STANDARD_STREAMS)) {
            return names.size() > 1
                    ? Terminal.wrongUse(streams, "- stands alone", USAGE)
                    : standardStreams(check, streams);
        }
        return files(names, check, streams);
    }

    private static int files(Set<String> names, boolean check, Streams streams) {
        List<Finding> refused = new ArrayList<>();
        boolean differs = false;
        for (String name : names) {
            switch (ProjectFiles.read(name)) {
                case ProjectFiles.Read.Found(SourceFile file) -> {
                    String formatted = format(file);
                    if (!formatted.equals(file.text())) {
                        differs = true;
                        Optional<String> why = check ? Optional.empty() : FileUpdate.write(file, formatted);
                        why.ifPresent(w -> refused.add(CommandFindings.of(CommandFindings.NOT_FORMATTED, name, w)));
                        if (why.isEmpty()) {
                            streams.out().println(check ? name : "formatted " + name);
                        }
                    }
                }
                case ProjectFiles.Read.Refused(String why) ->
                    refused.add(CommandFindings.of(CommandFindings.NOT_READ, name, why));
            }
        }
        if (!refused.isEmpty()) {
            streams.err().print(Terminal.text(refused));
        }
        return !refused.isEmpty() || (check && differs) ? 1 : 0;
    }

    private static int standardStreams(boolean check, Streams streams) {
        return switch (ProjectFiles.decode("standard input", everything(streams.in()))) {
            case ProjectFiles.Read.Found(SourceFile file) -> {
                String formatted = format(file);
                if (!check) {
                    streams.out().print(formatted);
                }
                yield check && !formatted.equals(file.text()) ? 1 : 0;
            }
            case ProjectFiles.Read.Refused(String why) -> {
                Finding finding = CommandFindings.of(CommandFindings.NOT_READ, "standard input", why);
                streams.err().print(Terminal.text(List.of(finding)));
                yield 1;
            }
        };
    }

    private static byte[] everything(InputStream in) {
        try {
            return in.readNBytes((int) ProjectFiles.LARGEST + 1);
        } catch (IOException cutOff) {
            throw new UncheckedIOException(cutOff);
        }
    }

    private static String format(SourceFile file) {
        return Formatter.format(Parser.parse(file));
    }
}

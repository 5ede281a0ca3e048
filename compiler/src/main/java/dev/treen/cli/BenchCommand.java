package dev.treen.cli;

import dev.treen.cli.bench.YieldBench;
import dev.treen.yield.TimeLimit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** {@code treen bench yield}: measures the layout search on instances with known answers; for contributors only. */
final class BenchCommand implements Subcommand {
    private static final String USAGE = "treen bench yield FILE... [--seconds S] [--clock wall|processor] [--steps N]"
            + " [--seed N] [--every K] [--only TEXT]";

    @Override
    public String name() {
        return "bench";
    }

    @Override
    public String summary() {
        return "measure the layout search on files of known instances";
    }

    @Override
    public int run(List<String> given, Streams streams) {
        Arguments arguments = Arguments.read(
                given, Set.of("--seconds", "--clock", "--steps", "--seed", "--every", "--only"));
        if (arguments.help()) {
            streams.out().println("usage: " + USAGE);
            return 0;
        }
        if (arguments.wrong().isPresent()) {
            return Terminal.wrongUse(streams, arguments.wrong().get(), USAGE);
        }
        List<String> names = arguments.names();
        if (names.size() < 2 || !names.getFirst().equals("yield")) {
            return Terminal.wrongUse(streams, "bench wants what to measure, and the files", USAGE);
        }
        String named = arguments.option("--clock").orElse("wall");
        TimeLimit.Clock clock = switch (named) {
            case "wall" -> TimeLimit.Clock.WALL;
            case "processor" -> TimeLimit.Clock.PROCESSOR;
            default -> null;
        };
        if (clock == null) {
            return Terminal.wrongUse(streams, "--clock is wall or processor, not " + named, USAGE);
        }
        try {
            var how = new YieldBench.Options(
                    Double.parseDouble(arguments.option("--seconds").orElse("10")),
                    clock,
                    Long.parseLong(arguments.option("--steps").orElse("" + Long.MAX_VALUE)),
                    Long.parseLong(arguments.option("--seed").orElse("1")),
                    Math.max(1, Integer.parseInt(arguments.option("--every").orElse("1"))),
                    arguments.option("--only").orElse(""));
            List<Path> files = names.stream().skip(1).map(Path::of).toList();
            return YieldBench.run(files, how, streams.out()) ? 0 : 1;
        } catch (NumberFormatException notANumber) {
            return Terminal.wrongUse(streams, "that is not a number: " + notANumber.getMessage(), USAGE);
        } catch (IOException unreadable) {
            streams.err().println("treen: cannot read " + unreadable.getMessage());
            return 1;
        }
    }
}

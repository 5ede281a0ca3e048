package dev.treen.cli;

import dev.treen.finding.NearWords;
import dev.treen.plan.Plan;
import dev.treen.quantity.LengthFormat;
import java.util.Optional;

/** {@code --units}: lengths are shown another way than the project's own; what its numbers mean stays. */
final class UnitsOption {
    static final String NAME = "--units";
    static final String USAGE = "[--units WAY]";
    static final String HELP = """
            Lengths are shown in the project's units, or in WAY: mm, in, or in/16, in/32 or in/64 for inches to
            the nearest such mark (in is in/32), with + for a shade over the mark and - for a shade under.
            With both, a plan shows millimetres and inches side by side, the project's own first.""";
    private static final String BOTH = "both";

    private UnitsOption() {
    }

    /** What is wrong with what was asked for. */
    static Optional<String> wrong(Arguments arguments) {
        return arguments.option(NAME).filter(name -> !name.equals(BOTH) && LengthFormat.named(name).isEmpty())
                .map(name -> {
                    String near = NearWords.of(name, LengthFormat.NAMES).stream().findFirst().map(w -> "; near is " + w)
                            .orElse("");
                    return "lengths are not shown in " + name + ", but in " + String.join(", ", LengthFormat.NAMES)
                            + near;
                });
    }

    /** What was asked for. */
    static Optional<LengthFormat> of(Arguments arguments) {
        return arguments.option(NAME).flatMap(LengthFormat::named);
    }

    /** How lengths are shown a second time, where both ways are asked for. */
    static Optional<LengthFormat> beside(Arguments arguments, Plan plan) {
        return arguments.option(NAME)
                .filter(BOTH::equals)
                .flatMap(both -> LengthFormat.named(plan.format().imperial() ? "mm" : "in"));
    }
}

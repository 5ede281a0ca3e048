package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.model.Joint;
import dev.treen.quantity.DecimalText;
import java.util.List;

/**
 * Screws or nails that are to bear more than they can be trusted with (rules of the trade S-04: Wood Handbook ch. 8; to
 * work with, a fifth of the mean for screws and a sixth for nails). Only a declared load is judged.
 */
final class PullsOut implements Check {
    static final FindingKind PULLS_OUT = FindingKind.warning("fastener-pulls-out",
            "Screws or nails bear more than they can be trusted with");

    @Override
    public List<FindingKind> kinds() {
        return List.of(PULLS_OUT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        return PullOuts.of(joined).stream()
                .filter(held -> held.made().joint().kilograms("pull").orElse(0) > held.kilograms())
                .map(PullsOut::finding)
                .toList();
    }

    private static Finding finding(PullOuts.Held held) {
        Joint joint = held.made().joint();
        double load = joint.kilograms("pull").orElse(0);
        int enough = (int) Math.ceil(load / (held.kilograms() / held.set().count()));
        return Finding.of(
                PULLS_OUT,
                joint.given("pull").map(setting -> setting.valueAt()).orElse(joint.at()),
                "The " + joint.kind() + "s in `" + joint.right().name() + "` can't be trusted with this weight")
                .found("It is " + DecimalText.write(load, 1) + " kg; they bear "
                        + DecimalText.write(held.kilograms(), 1) + " kg: " + PullOutFact.words(held) + ".")
                .because("The means are of small clear pieces (" + held.pull().citation().source()
                        + "), and only a share is to be worked with." + (held.set().endGrain()
                                ? " End grain is not to be relied on."
                                : "")
                        + " Where people stand on it or under it, the local code and licensed practice decide.")
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name())
                .number("load", load)
                .number("bears", held.kilograms())
                .remedy(Remedy.choice("take " + enough + " of them, or longer ones, or let it rest on wood"))
                .build();
    }
}

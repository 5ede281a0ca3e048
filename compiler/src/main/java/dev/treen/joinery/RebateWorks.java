package dev.treen.joinery;

import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The work of a rebate: plane or cut all that one setting serves, then glue and pin what lies in it. */
final class RebateWorks {
    private RebateWorks() {
    }

    /** What has to be alike for parts to be rebated without a change of fence, depth or stop. */
    private record Setting(boolean along, String edge, Length wide, Length deep, Length stop) {
        static Setting of(MadeJoint made) {
            boolean along = Rebate.alongTheGrain(made);
            return new Setting(
                    along,
                    along ? GrooveWorks.nearerEdge(made) : "",
                    // Across the grain it is scribed, whatever it measures.
                    along ? Work.figure(made, "wide") : Length.ZERO,
                    Work.figure(made, "deep"),
                    Work.figure(made, "stop"));
        }
    }

    static List<Work> of(List<MadeJoint> statement) {
        Map<Setting, List<MadeJoint>> settings = new LinkedHashMap<>();
        statement.forEach(made -> settings.computeIfAbsent(Setting.of(made), s -> new ArrayList<>()).add(made));
        List<Work> works = new ArrayList<>();
        settings.forEach((setting, made) -> works.add(cut(setting, made)));
        works.add(new Work(
                Work.Stage.GLUE,
                "Glue and pin the rebates",
                Rebate.names(statement),
                List.of(),
                "clamps, brads",
                List.of(),
                "",
                "square by its diagonals",
                "Bore for brads near an end, so that the wood does not split."));
        return works;
    }

    private static Work cut(Setting setting, List<MadeJoint> statement) {
        List<String> cut = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<String> lying = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        boolean stopped = setting.stop().signum() > 0;
        boolean strip = setting.along() && !stopped;
        List<Work.GaugeSetting> gauges = new ArrayList<>();
        if (setting.along()) {
            gauges.add(new Work.GaugeSetting("fence", setting.wide()));
        }
        gauges.add(new Work.GaugeSetting("depth", setting.deep()));
        if (stopped) {
            gauges.add(new Work.GaugeSetting("stop", setting.stop()));
        }
        return new Work(
                strip ? Work.Stage.ALONG_STRIP : Work.Stage.AFTER_LENGTH,
                stopped ? "Chop the stopped ends first, then work the rebates between them"
                        : strip ? "Plane the rebates, while the strips are whole"
                                : "Cut the rebates, their width scribed from the parts that lie in them",
                cut,
                setting.along() ? List.of() : lying,
                stopped ? "chisel, rebate plane or router plane, or a cutter lowered between stops"
                        : strip ? "rebate plane with a fence" : "fine saw and rebate plane, gauge",
                gauges,
                "the inside face" + (setting.along() ? ", the fence on the " + setting.edge() + " edge" : ""),
                "the lip is equally thick from end to end",
                "Clamp the work; keep both hands behind the edge.");
    }
}

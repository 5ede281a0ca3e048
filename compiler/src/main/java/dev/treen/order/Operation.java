package dev.treen.order;

import dev.treen.joinery.Work;
import java.util.List;

/** Something to do before its place in the order is known; {@code phase} breaks ties, earlier phases first. */
record Operation(
        int id,
        int phase,
        String action,
        List<String> parts,
        String tool,
        List<Work.GaugeSetting> settings,
        String from,
        String check,
        String caution) {

    static Operation plain(int id, int phase, String action, List<String> parts, String tool, String check) {
        return new Operation(id, phase, action, parts, tool, List.of(), "", check, "");
    }
}

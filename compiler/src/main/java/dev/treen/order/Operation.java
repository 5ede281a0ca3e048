package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import java.util.List;
import java.util.Optional;

/**
 * Something to do, before its place in the order is known.
 *
 * @param id its place in the list of operations
 * @param phase when in the making it comes
 * @param action in the imperative
 * @param how what it consists of, one line each in the order of the work; may be empty
 * @param parts the parts or boards worked on
 * @param with parts that must be there to mark or fit from
 * @param tool by kind
 * @param settings what is set before it
 * @param from the line or face it is worked from; may be empty
 * @param check what to look at before going on; may be empty
 * @param caution may be empty
 * @param minutes hands-on time, where a figure is known
 * @param pause what must pass before the next step on these parts
 */
public record Operation(
        int id,
        Phase phase,
        String action,
        List<String> how,
        List<String> parts,
        List<String> with,
        String tool,
        List<GaugeSetting> settings,
        String from,
        String check,
        String caution,
        Optional<Minutes> minutes,
        Optional<Wait> pause) {

    /** Keeps its own copies. */
    public Operation {
        how = List.copyOf(how);
        parts = List.copyOf(parts);
        with = List.copyOf(with);
        settings = List.copyOf(settings);
    }

    /** An operation with nothing to set, check or wait for yet. */
    public static Operation of(Phase phase, String action, List<String> parts, String tool) {
        return new Operation(
                -1, phase, action, List.of(), parts, List.of(), tool, List.of(), "", "", "", Optional.empty(),
                Optional.empty());
    }

    /** The same under another id. */
    public Operation numbered(int number) {
        return new Operation(
                number, phase, action, how, parts, with, tool, settings, from, check, caution, minutes, pause);
    }

    /** The same in other words. */
    public Operation saying(String words) {
        return new Operation(id, phase, words, how, parts, with, tool, settings, from, check, caution, minutes, pause);
    }

    /** The same, with what it consists of. */
    public Operation inSteps(List<String> lines) {
        return new Operation(id, phase, action, lines, parts, with, tool, settings, from, check, caution, minutes,
                pause);
    }

    /** The same on other parts. */
    public Operation on(List<String> others) {
        return new Operation(id, phase, action, how, others, with, tool, settings, from, check, caution, minutes,
                pause);
    }

    /** The same, marked or fitted from other parts. */
    public Operation using(List<String> others) {
        return new Operation(id, phase, action, how, parts, others, tool, settings, from, check, caution, minutes,
                pause);
    }

    /** The same with a gauge, fence or stop set. */
    public Operation setting(List<GaugeSetting> all) {
        return new Operation(id, phase, action, how, parts, with, tool, all, from, check, caution, minutes, pause);
    }

    /** The same, worked from a line or face. */
    public Operation from(String line) {
        return new Operation(id, phase, action, how, parts, with, tool, settings, line, check, caution, minutes, pause);
    }

    /** The same with something to look at before going on. */
    public Operation checking(String words) {
        return new Operation(id, phase, action, how, parts, with, tool, settings, from, words, caution, minutes, pause);
    }

    /** The same with a caution. */
    public Operation minding(String words) {
        return new Operation(id, phase, action, how, parts, with, tool, settings, from, check, words, minutes, pause);
    }

    /** The same with its hands-on time. */
    public Operation taking(Minutes time) {
        return new Operation(
                id, phase, action, how, parts, with, tool, settings, from, check, caution, Optional.of(time), pause);
    }

    /** The same with a wait behind it. */
    public Operation waiting(Wait wait) {
        return new Operation(
                id, phase, action, how, parts, with, tool, settings, from, check, caution, minutes, Optional.of(wait));
    }
}

package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.source.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What one evaluation gathers as it goes. Never leaves this package. */
final class Session {
    /** How many values may wait for each other: enough for any project, and far from the end of the stack. */
    static final int LONGEST_CHAIN = 120;

    final List<Finding> findings = new ArrayList<>();
    final List<Usage> usages = new ArrayList<>();
    final List<Symbol> symbols = new ArrayList<>();
    final List<Measure> bareNumbers = new ArrayList<>();
    final Map<String, PartEntry> parts = new HashMap<>();
    final Map<String, BoardEntry> boards = new HashMap<>();
    final Map<String, RoomClimate> rooms = new LinkedHashMap<>();
    final Map<String, DeclaredSpecies> woods = new LinkedHashMap<>();
    private final Deque<Cell> running = new ArrayDeque<>();
    private final Set<Span> told = new LinkedHashSet<>();

    /** One with the same parts and boards, which keeps its own findings. */
    Session beside() {
        Session other = new Session();
        other.parts.putAll(parts);
        other.boards.putAll(boards);
        return other;
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    boolean enter(Cell cell) {
        if (running.size() >= LONGEST_CHAIN) {
            if (told.add(cell.at())) {
                add(Finding.of(
                        ModelFindings.TOO_MANY,
                        cell.at(),
                        "`" + cell.label() + "` stands at the end of more than " + LONGEST_CHAIN
                                + " values that wait for each other")
                        .because("Treen follows at most " + LONGEST_CHAIN + " steps from value to value.")
                        .build());
            }
            return false;
        }
        running.push(cell);
        return true;
    }

    void leave() {
        running.pop();
    }

    /** {@code cell} was asked for while it was being worked out: says the whole circle, once. */
    void circle(Cell cell) {
        List<Cell> path = new ArrayList<>();
        for (Cell each : running) {
            path.addFirst(each);
            if (each == cell) {
                break;
            }
        }
        StringBuilder words = new StringBuilder();
        for (Cell each : path) {
            words.append('`').append(each.label()).append("` needs ");
        }
        words.append('`').append(cell.label()).append('`');
        if (path.stream().anyMatch(each -> told.contains(each.at()))) {
            return;
        }
        path.forEach(each -> told.add(each.at()));
        Finding.Builder finding = Finding.of(
                ModelFindings.GOES_IN_CIRCLES, cell.at(), "`" + cell.label() + "` depends on itself")
                .found(words + ".")
                .because("A size that waits for itself is never known; one of them has to be a figure.");
        path.stream().skip(1).forEach(each -> finding.related(each.at(), "`" + each.label() + "` is in the circle"));
        add(finding.build());
    }
}

package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.source.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What one evaluation gathers as it goes. Never leaves this package. */
final class Session {
    /** How many values may wait for each other: enough for any project, and far from the end of the stack. */
    static final int LONGEST_CHAIN = 120;

    final List<Finding> findings = new ArrayList<>();
    final List<Usage> usages = new ArrayList<>();
    final List<Symbol> symbols = new ArrayList<>();
    final List<Measure> bareNumbers = new ArrayList<>();
    final Map<String, PartEntry> parts = new HashMap<>();
    final Map<String, BoardEntry> boards = new LinkedHashMap<>();
    final Map<String, RoomClimate> rooms = new LinkedHashMap<>();
    final Map<String, DeclaredSpecies> woods = new LinkedHashMap<>();
    final List<Ware> hardware = new ArrayList<>();
    final Map<String, InstanceEntry> instances = new LinkedHashMap<>();
    final MeasuredValues measured;
    private final Notes all = new Notes(findings, usages, symbols, bareNumbers);
    private Notes notes = all;
    private final Deque<Integer> heights = new ArrayDeque<>();
    private int highest;
    private boolean knowsAll;
    private final Deque<Cell> running = new ArrayDeque<>();
    private final Set<Span> told = new LinkedHashSet<>();
    private Optional<InstanceEntry> inside = Optional.empty();

    Session() {
        this(MeasuredValues.NONE);
    }

    Session(MeasuredValues measured) {
        this.measured = measured;
    }

    /** One with the same things and values, which keeps its own findings. */
    Session beside() {
        Session other = new Session(measured);
        other.parts.putAll(parts);
        other.boards.putAll(boards);
        other.instances.putAll(instances);
        return other;
    }

    /** The species of all boards and sheets, as they write them. */
    Set<String> species() {
        Set<String> all = new LinkedHashSet<>();
        boards.values().forEach(board -> board.species().ifPresent(all::add));
        return all;
    }

    /** A finding; one that lies inside a pattern is said where the pattern is used. */
    void add(Finding finding) {
        notes.findings.add(inside.map(instance -> instance.atUse(finding)).orElse(finding));
    }

    /** A name was used. */
    void used(Usage usage) {
        notes.usages.add(usage);
    }

    /** A name was declared. */
    void declared(Symbol symbol) {
        notes.symbols.add(symbol);
    }

    /** A figure without a unit was read as a length. */
    void bare(Measure number) {
        notes.bareNumbers.add(number);
    }

    /** Where notes are taken now. */
    Notes notes() {
        return notes;
    }

    /** Does {@code work}, with notes taken in {@code where}. */
    <T> T noting(Notes where, Supplier<T> work) {
        Notes before = notes;
        notes = where;
        try {
            return work.get();
        } finally {
            notes = before;
        }
    }

    /** Puts notes that were taken apart with the others. */
    void gather(Notes apart) {
        put(apart.findings, findings);
        put(apart.usages, usages);
        put(apart.symbols, symbols);
        put(apart.bareNumbers, bareNumbers);
    }

    /** Most statements have a few notes of one kind and none of the others, and all of them are gathered at each edit. */
    private static <T> void put(List<T> some, List<T> all) {
        for (int i = 0; i < some.size(); i++) {
            all.add(some.get(i));
        }
    }

    /** Every value with a name at the top of the file has been asked for. */
    void hasAskedAll() {
        knowsAll = true;
    }

    /** Whether every value with a name at the top of the file has been asked for. */
    boolean knowsAll() {
        return knowsAll;
    }

    /** Over how many steps the longest chain of values goes. */
    int highest() {
        return highest;
    }

    /** Everything but the values themselves is gathered anew. */
    void begin() {
        List.of(findings, usages, symbols, bareNumbers, hardware).forEach(List::clear);
        List.of(parts, boards, rooms, woods, instances).forEach(Map::clear);
        all.forget();
        told.clear();
        highest = 0;
        knowsAll = false;
    }

    /** Does {@code work} for the inside of {@code instance}, so that what is found there is said at its use. */
    <T> T within(Optional<InstanceEntry> instance, Supplier<T> work) {
        Optional<InstanceEntry> before = inside;
        inside = instance;
        try {
            return work.get();
        } finally {
            inside = before;
        }
    }

    /** Does {@code work}; what it says without a way out is given this one. */
    <T> T suggesting(Remedy way, Supplier<T> work) {
        List<Finding> said = notes.findings;
        int before = said.size();
        T result = work.get();
        said.subList(before, said.size())
                .replaceAll(finding -> finding.remedies().isEmpty() ? finding.with(way) : finding);
        return result;
    }

    /** The same for work that gives nothing. */
    void within(Optional<InstanceEntry> instance, Runnable work) {
        within(instance, () -> {
            work.run();
            return true;
        });
    }

    boolean enter(Cell cell) {
        if (running.size() >= LONGEST_CHAIN) {
            if (told.add(cell.at())) {
                add(Finding.of(
                        ModelFindings.TOO_MANY,
                        cell.at(),
                        "`" + cell.path() + "` stands at the end of more than " + LONGEST_CHAIN
                                + " values that wait for each other")
                        .because("Treen follows at most " + LONGEST_CHAIN + " steps from value to value.")
                        .build());
            }
            return false;
        }
        running.push(cell);
        heights.push(0);
        return true;
    }

    /** The value that was last entered is known; over how many steps it came about. */
    int leave() {
        running.pop();
        int height = heights.pop() + 1;
        highest = Math.max(highest, height);
        return height;
    }

    /** The value that is being worked out rests on one of this height. */
    void isBehind(int height) {
        if (!heights.isEmpty()) {
            heights.push(Math.max(heights.pop(), height));
        }
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
            words.append('`').append(each.path()).append("` needs ");
        }
        words.append('`').append(cell.path()).append('`');
        if (path.stream().anyMatch(each -> told.contains(each.at()))) {
            return;
        }
        path.forEach(each -> told.add(each.at()));
        Finding.Builder finding = Finding.of(
                ModelFindings.GOES_IN_CIRCLES, cell.at(), "`" + cell.path() + "` depends on itself")
                .found(words + ".")
                .because("A size that waits for itself is never known; one of them has to be a figure.");
        path.stream().skip(1).forEach(each -> finding.related(each.at(), "`" + each.path() + "` is in the circle"));
        add(finding.build());
    }
}

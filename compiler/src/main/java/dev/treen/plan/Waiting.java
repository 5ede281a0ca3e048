package dev.treen.plan;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Severity;
import dev.treen.joinery.JoineryFindings;
import dev.treen.joinery.JointKind;
import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluation;
import dev.treen.model.ModelFindings;
import dev.treen.model.Usage;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxFindings;
import dev.treen.syntax.SyntaxTree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Keeps a fault from being told again wherever it shows. While a statement does not read, what rests on it waits: a part
 * whose board is half typed is not said to be of no known wood, and a name that the broken line may have declared is not
 * said to be unknown. What is wrong in a line of its own is told in any case.
 */
final class Waiting {
    /** Told where they are, whatever else is wrong: nothing that is typed elsewhere can be their cause. */
    private static final Set<FindingKind> OWN = own();

    /** After these it is open where the names in the rest of a block belong. */
    private static final Set<FindingKind> SWALLOW = Set.of(
            SyntaxFindings.BRACE_NOT_CLOSED,
            SyntaxFindings.BRACE_NOT_OPENED,
            SyntaxFindings.STRAY_BRACE,
            SyntaxFindings.NESTED_TOO_DEEP,
            SyntaxFindings.TEXT_NOT_CLOSED,
            SyntaxFindings.COMMENT_NOT_CLOSED,
            SyntaxFindings.MORE_FINDINGS);

    /** What is wrong with a statement that was not read whole may be wrong with the reading alone. */
    private static final Set<FindingKind> OF_MISREADING = Set.of(
            ModelFindings.MISSING_PROPERTY, ModelFindings.JOINED_WRONGLY);

    private final SourceFile file;
    private final List<Statement> statements;
    /** Where each statement begins and ends in the file. */
    private final int[] starts;
    private final int[] ends;
    private final Links restsOn;
    private final Links usedBy;
    /** The statements that take in other files, and those that rest on what is declared there. */
    private final BitSet uses = new BitSet();
    private final BitSet restOnUses = new BitSet();
    private final BitSet faulty = new BitSet();
    private final BitSet misread = new BitSet();
    private final BitSet waiting = new BitSet();
    /** Whether a statement that does not read may be a joint, on which it rests what a nail or a screw finds together. */
    private boolean jointLost;
    private boolean namesLost;
    private boolean patternsLost;
    private boolean projectLost;

    private Waiting(SyntaxTree tree, Evaluation evaluation) {
        this.file = tree.file();
        this.statements = tree.statements();
        this.starts = statements.stream().mapToInt(each -> each.span().start()).toArray();
        this.ends = statements.stream().mapToInt(each -> each.span().end()).toArray();
        for (int i = 0; i < starts.length; i++) {
            if (statements.get(i) instanceof Statement.Use) {
                uses.set(i);
            }
        }
        List<Usage> usages = evaluation.usages();
        int[] users = new int[usages.size()];
        int[] used = new int[usages.size()];
        int count = 0;
        for (Usage usage : usages) {
            int from = at(usage.at());
            int to = at(usage.declaredAt());
            if (from >= 0 && to >= 0 && from != to) {
                users[count] = from;
                used[count] = to;
                count++;
            } else if (from >= 0 && !usage.declaredAt().file().equals(file)) {
                restOnUses.set(from);
            }
        }
        this.restsOn = new Links(users, used, count, starts.length);
        this.usedBy = new Links(used, users, count, starts.length);
    }

    /** From each statement to others, one behind the other in one array: there are as many as names in the text. */
    private static final class Links {
        private final int[] begins;
        private final int[] others;

        /** The first {@code count} of {@code from}, each to its number in {@code to}, of so many statements. */
        Links(int[] from, int[] to, int count, int statements) {
            begins = new int[statements + 1];
            for (int i = 0; i < count; i++) {
                begins[from[i] + 1]++;
            }
            for (int i = 0; i < statements; i++) {
                begins[i + 1] += begins[i];
            }
            others = new int[count];
            int[] next = Arrays.copyOf(begins, statements);
            for (int i = 0; i < count; i++) {
                others[next[from[i]]++] = to[i];
            }
        }

        IntStream of(int statement) {
            return Arrays.stream(others, begins[statement], begins[statement + 1]);
        }
    }

    /** On which a statement rests, some of them more than once. */
    private IntStream restsOn(int statement) {
        return restOnUses.get(statement)
                ? IntStream.concat(restsOn.of(statement), uses.stream())
                : restsOn.of(statement);
    }

    /** Which rest on a statement, some of them more than once. */
    private IntStream usedBy(int statement) {
        return uses.get(statement)
                ? IntStream.concat(usedBy.of(statement), restOnUses.stream())
                : usedBy.of(statement);
    }

    /** Whether a joint that names this statement waits. */
    private boolean isJoinedByWaiting(int statement) {
        return usedBy.of(statement)
                .anyMatch(user -> waiting.get(user) && statements.get(user) instanceof Statement.Joint);
    }

    /** What waits among what reading the file has found; empty where nothing is wrong with it. */
    static Optional<Waiting> of(SyntaxTree tree, Evaluation evaluation) {
        List<Finding> errors = evaluation.project().findings().stream()
                .filter(each -> each.severity() == Severity.ERROR)
                .toList();
        if (errors.isEmpty()) {
            return Optional.empty();
        }
        Waiting waiting = new Waiting(tree, evaluation);
        // A name that is not known may be one that another line would have declared, so it is looked at last; and the
        // project's own names, of rooms and saws, after the lines that declare such things.
        List<Finding> read = errors.stream()
                .sorted(Comparator.comparingInt((Finding each) -> !each.kind().equals(ModelFindings.UNKNOWN_NAME)
                        ? 0
                        : waiting.declaresForProject(each) ? 1 : 2))
                .toList();
        waiting.settle(read);
        return Optional.of(waiting);
    }

    /** {@code findings} without those that wait for others. */
    List<Finding> without(List<Finding> findings) {
        List<Finding> told = findings.stream().filter(each -> !waits(each)).toList();
        // Something is wrong, so something is told, whatever waits for what.
        return told.stream().anyMatch(each -> each.severity() == Severity.ERROR) ? told : findings;
    }

    /** Whether a finding lies in a line that stands at the top and declares what the project may name: a room, a saw. */
    private boolean declaresForProject(Finding finding) {
        int statement = at(finding.at());
        return statement >= 0 && statements.get(statement) instanceof Statement.Property;
    }

    /** Which statements are at fault, and which rest on them. */
    private void settle(List<Finding> read) {
        read.stream().filter(each -> OWN.contains(each.kind()) && !ofAnInstance(each)).forEach(this::blame);
        patternsLost = !misread.isEmpty();
        read.stream().filter(each -> ofAnInstance(each) && !patternsLost).forEach(this::blame);
        spread(read);
        // What else is wrong is a fault of its own where it rests on none: those that rest on no other come first.
        BitSet wrong = new BitSet();
        read.stream().filter(each -> !waits(each)).mapToInt(each -> at(each.at())).filter(i -> i >= 0)
                .forEach(wrong::set);
        read.stream().filter(each -> !waits(each) && !restsOnOther(at(each.at()), wrong)).forEach(this::blame);
        spread(read);
        read.stream().filter(each -> !waits(each)).toList().forEach(this::blame);
        spread(read);
    }

    /** Whether a statement rests, over any number of steps, on another of {@code these}. */
    private boolean restsOnOther(int statement, BitSet these) {
        BitSet seen = new BitSet();
        Deque<Integer> next = new ArrayDeque<>();
        if (statement >= 0) {
            next.add(statement);
        }
        while (!next.isEmpty()) {
            restsOn(next.remove()).filter(i -> !seen.get(i)).forEach(i -> {
                seen.set(i);
                next.add(i);
            });
        }
        if (statement >= 0) {
            seen.clear(statement);
        }
        return seen.intersects(these);
    }

    private void blame(Finding finding) {
        int statement = at(finding.at());
        if (statement < 0) {
            // In another file, or a brace between the statements of this one.
            namesLost |= !finding.at().file().equals(file) || SWALLOW.contains(finding.kind());
            return;
        }
        faulty.set(statement);
        if (OWN.contains(finding.kind())) {
            misread.set(statement);
        }
        Statement owner = statements.get(statement);
        jointLost |= switch (owner) {
            case Statement.Broken _,Statement.Property _,Statement.Joint _ -> true;
            case Statement other -> false;
        };
        projectLost |= owner instanceof Statement.Project || holdsSettings(owner);
        // A joint that is read but joins the wrong way has the name that it gives itself.
        boolean named = finding.kind().equals(ModelFindings.JOINED_WRONGLY);
        namesLost |= SWALLOW.contains(finding.kind()) || (!named && losesName(owner, finding.at()));
    }

    /** Whether a statement that cannot be read looks like the project block. */
    private static boolean holdsSettings(Statement statement) {
        return switch (statement) {
            case Statement.Property property when isSetting(property) -> true;
            case Statement.Broken _,Statement.Property _ -> statement.body().stream()
                    .flatMap(block -> block.statements().stream())
                    .anyMatch(each -> each instanceof Statement.Property property && isSetting(property));
            case Statement other -> false;
        };
    }

    private static boolean isSetting(Statement.Property property) {
        return Set.of("units", "climate", "tools", "allow").contains(property.name().text());
    }

    /** Whether what is wrong at {@code place} is in the head of a declaration, so that its name may not be the one meant. */
    private static boolean losesName(Statement statement, Span place) {
        List<Block> blocks = new ArrayList<>(statement.body().stream().toList());
        if (statement instanceof Statement.When(var _, var _, var _, var otherwise)) {
            otherwise.ifPresent(blocks::add);
        }
        boolean declares = switch (statement) {
            case Statement.Pattern _,Statement.Repeat _,Statement.When _,Statement.Broken _ -> true;
            case Statement other -> false;
        };
        for (Block block : blocks) {
            if (block.span().start() < place.start() && place.end() <= block.span().end()) {
                return declares && block.statements().stream()
                        .filter(inner -> inner.span().start() <= place.start() && place.start() <= inner.span().end())
                        .anyMatch(inner -> losesName(inner, place));
            }
        }
        return switch (statement) {
            case Statement.Require _,Statement.Accept _,Statement.Measured _,Statement.Holds _,Statement.Project _ ->
                false;
            case Statement other -> true;
        };
    }

    /** What rests on what waits, waits; so does what has a name that may be lost. */
    private void spread(List<Finding> read) {
        waiting.or(faulty);
        for (Finding each : read) {
            if (namesLost && each.kind().equals(ModelFindings.UNKNOWN_NAME) && at(each.at()) >= 0) {
                waiting.set(at(each.at()));
            }
        }
        Deque<Integer> next = new ArrayDeque<>();
        waiting.stream().forEach(next::add);
        while (!next.isEmpty()) {
            usedBy(next.remove()).filter(user -> !waiting.get(user)).forEach(user -> {
                waiting.set(user);
                next.add(user);
            });
        }
    }

    /** Whether a statement holds what other joints bring together. */
    private boolean isOfAFastener(int statement) {
        return statement >= 0
                && statements.get(statement) instanceof Statement.Joint joint
                && JointKinds.named(joint.kind().text()).filter(JointKind::fastens).isPresent();
    }

    /** A word that may well be the name of a pattern, were the line that brings it whole. */
    private boolean ofAnInstance(Finding finding) {
        int statement = at(finding.at());
        return finding.kind().equals(ModelFindings.DOES_NOT_BELONG)
                && statement >= 0
                && statements.get(statement) instanceof Statement.Property property
                && property.name().span().equals(finding.at())
                && property.body().isPresent()
                && property.values().size() == 1;
    }

    private boolean waits(Finding finding) {
        int statement = at(finding.at());
        if (patternsLost && ofAnInstance(finding)) {
            return true;
        }
        if (OWN.contains(finding.kind())) {
            return false;
        }
        if (statement >= 0 && faulty.get(statement)) {
            // What is missing, or assumed in its place, may be what is misspelt.
            return finding.severity() == Severity.NOTE
                    || (misread.get(statement) && OF_MISREADING.contains(finding.kind()));
        }
        return projectLost
                || (namesLost && finding.kind().equals(ModelFindings.UNKNOWN_NAME))
                || (namesLost && finding.kind().equals(ModelFindings.EMPTY_PROJECT))
                || (statement >= 0 && waiting.get(statement))
                || (jointLost && finding.kind().equals(JoineryFindings.MEETS_WRONGLY) && isOfAFastener(statement))
                // What a part does depends on its joints, and a fact of it may be missing for want of one.
                || (statement >= 0 && isJoinedByWaiting(statement))
                || (statement >= 0 && statements.get(statement) instanceof Statement.Require
                        && finding.kind().equals(ModelFindings.UNKNOWN_NAME) && !faulty.isEmpty())
                || finding.related().stream().anyMatch(each -> at(each.at()) >= 0 && waiting.get(at(each.at())));
    }

    /**
     * The number of the last statement at the top that begins at or before a place and reaches it, or −1. What only begins
     * where a statement ends, as a stray sign behind its brace, stands beside it, with a blank between them or without.
     */
    private int at(Span place) {
        if (!place.file().equals(file)) {
            return -1;
        }
        int start = place.start();
        int low = 0;
        int high = starts.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (start < starts[middle]) {
                high = middle - 1;
            } else {
                low = middle + 1;
            }
        }
        return high >= 0 && (start < ends[high] || (start == ends[high] && place.end() == start)) ? high : -1;
    }

    private static Set<FindingKind> own() {
        Set<FindingKind> own = new HashSet<>(SyntaxFindings.all());
        own.addAll(List.of(
                ModelFindings.UNKNOWN_PROPERTY,
                ModelFindings.GIVEN_TWICE,
                ModelFindings.DOES_NOT_BELONG,
                ModelFindings.UNKNOWN_JOINT,
                ModelFindings.FILE_NOT_FOUND,
                ModelFindings.TOO_MANY,
                ModelFindings.GOES_IN_CIRCLES));
        return Set.copyOf(own);
    }
}

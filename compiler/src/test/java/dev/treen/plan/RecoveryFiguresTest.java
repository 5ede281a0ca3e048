package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.Severity;
import dev.treen.model.Joint;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Token;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Damages every example in every small way and looks at the project that is left. Where something is said at the damage,
 * nothing is said anywhere else, and what does not rest on the damaged statement keeps its values. Where nothing is said
 * at the damage, the text is another project in good order, and what is said of it is true.
 */
class RecoveryFiguresTest {
    /** How many offsets the next one that is tried lies further on; 1 tries all, which takes long. */
    private static final int STEP = Integer.getInteger("treen.recovery.step", 22);

    /** Which share of the tokens is taken out, each alone; 1 takes out all. */
    private static final int TOKENS = Integer.getInteger("treen.recovery.tokens", 3);

    private static final Set<String> FITTED = Set.of("mortise_tenon", "nail", "screw", "batten", "hinge", "groove");

    /** Laid out on both sides of the line at which a lid is cut free, and on nothing else that they meet. */
    private static final Set<String> LAID_OUT = Set.of("dovetail", "finger");

    static List<Path> examples() {
        return TreenFiles.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aLostTokenIsToldWhereItIsMissing(Path path) {
        Bench bench = new Bench(path);
        List<Token> tokens = bench.whole.tree().tokens();
        // Examples that are alike are not looked at in the same places.
        for (int i = bench.file.text().length() % TOKENS; i < tokens.size(); i += TOKENS) {
            bench.without(tokens.get(i).start(), tokens.get(i).end());
        }
        bench.judge("tokens taken out");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aLostLineIsToldWhereItIsMissing(Path path) {
        Bench bench = new Bench(path);
        for (int line = 0; line + 1 < bench.file.lineCount(); line++) {
            bench.without(bench.file.lineStart(line), bench.file.lineStart(line + 1));
        }
        bench.judge("lines taken out");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aLineHalfTypedIsToldThere(Path path) {
        Bench bench = new Bench(path);
        for (int at = 0; at < bench.file.text().length(); at += STEP) {
            int line = bench.file.lineOf(at);
            bench.without(at, Math.max(at, bench.file.lineStart(line) + bench.file.lineText(line).length()));
        }
        bench.judge("lines half typed");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aFileCutAnywhereIsToldAtTheCut(Path path) {
        Bench bench = new Bench(path);
        for (int at = 0; at < bench.file.text().length(); at += STEP) {
            bench.without(at, bench.file.text().length());
        }
        bench.judge("cuts");
    }

    /** One example, whole, and what became of its damaged forms. */
    private static final class Bench {
        final Path path;
        final Compilation whole;
        final SourceFile file;
        final Map<String, String> model;
        final List<Statement> statements;
        final Map<Integer, Set<Integer>> restsOn = new HashMap<>();
        final Set<String> before = new TreeSet<>();
        final List<String> away = new ArrayList<>();
        final List<String> lost = new ArrayList<>();
        int positions;
        int told;
        int sound;
        int soundWithFindings;

        Bench(Path path) {
            this.path = path;
            this.whole = TreenFiles.compile(path, TreenFiles.file(path).text());
            this.file = whole.file();
            this.model = ModelText.of(whole);
            this.statements = whole.tree().statements();
            whole.checked().findings().forEach(finding -> before.add(finding.code() + " " + finding.headline()));
            Set<Integer> uses = new TreeSet<>();
            for (int i = 0; i < statements.size(); i++) {
                if (statements.get(i) instanceof Statement.Use) {
                    uses.add(i);
                }
            }
            neighbours();
            whole.evaluation().usages().forEach(usage -> {
                if (usage.at().file().equals(file)) {
                    Set<Integer> on = restsOn.computeIfAbsent(statementAt(usage.at().start()), k -> new TreeSet<>());
                    if (usage.declaredAt().file().equals(file)) {
                        on.add(statementAt(usage.declaredAt().start()));
                    } else {
                        on.addAll(uses);
                    }
                }
            });
        }

        /** Joints that are made to fit the other joints of their parts rest on those. */
        private void neighbours() {
            var joints = whole.evaluation().project().joints();
            for (var one : joints) {
                boolean laidOut = LAID_OUT.contains(one.kind());
                if (FITTED.contains(one.kind()) || laidOut) {
                    Set<Integer> on = restsOn.computeIfAbsent(statementAt(one.at().start()), k -> new TreeSet<>());
                    joints.stream().filter(other -> meet(one, other))
                            .filter(other -> !laidOut || other.kind().equals("lid_line"))
                            .forEach(other -> on.add(statementAt(other.at().start())));
                }
            }
        }

        private static boolean meet(Joint one, Joint other) {
            Set<String> names = Set.of(other.left().name(), other.right().name());
            return names.contains(one.left().name()) || names.contains(one.right().name());
        }

        /** The number of the statement at the top that holds an offset, or −1. */
        private int statementAt(int offset) {
            for (int i = 0; i < statements.size(); i++) {
                if (statements.get(i).span().touches(offset)) {
                    return i;
                }
            }
            return -1;
        }

        /** Takes out the text from {@code start} to {@code end}. */
        void without(int start, int end) {
            positions++;
            String text = file.text().substring(0, start) + file.text().substring(end);
            Compilation damaged = TreenFiles.compile(path, text);
            Set<Integer> touched = touched(start, end);
            int from = touched.stream().mapToInt(i -> statements.get(i).span().start()).min().orElse(start);
            int to = touched.stream().mapToInt(i -> statements.get(i).span().end()).max().orElse(end);
            from = file.lineStart(Math.max(0, file.lineOf(Math.min(from, start)) - 1));
            int toInDamaged = Math.max(to, end) - (end - start);
            SourceFile now = damaged.file();
            int nearTo = endOfLine(now, Math.min(now.lineCount() - 1, now.lineOf(toInDamaged) + 1));
            int first = from;
            List<Finding> far = new ArrayList<>();
            boolean near = damaged.evaluation().project().findings().stream()
                    .anyMatch(f -> f.severity() == Severity.ERROR && f.at().end() >= first && f.at().start() <= nearTo
                    // A name that is gone is missed where it is used, which may be the next line.
                            && (!f.code().equals("unknown-name")
                                    || now.lineOf(f.at().start()) == now.lineOf(Math.min(start, now.text().length()))));
            for (Finding finding : damaged.checked().findings()) {
                Span at = finding.at();
                boolean here = at.end() >= from && at.start() <= nearTo;
                if (!here && !before.contains(finding.code() + " " + finding.headline())) {
                    far.add(finding);
                }
            }
            if (!near) {
                sound++;
                soundWithFindings += far.isEmpty() ? 0 : 1;
                return;
            }
            told++;
            String what = file.span(start, end) + " without `" + file.span(start, Math.min(end, start + 40)).text()
                    + "`: ";
            far.forEach(finding -> away.add(what + "told " + finding.code() + " " + finding.headline() + " at "
                    + finding.at().line()));
            compare(damaged, touched, what);
        }

        private static int endOfLine(SourceFile file, int line) {
            return file.lineStart(line) + file.lineText(line).length();
        }

        private Set<Integer> touched(int start, int end) {
            // What is typed behind a statement becomes a part of it, and a doc comment is one of what stands below it.
            int first = file.lineStart(file.lineOf(start));
            int line = file.lineOf(end);
            int last = file.lineText(line).contains("///") && line + 1 < file.lineCount()
                    ? endOfLine(file, line + 1)
                    : end;
            Set<Integer> touched = new TreeSet<>();
            for (int i = 0; i < statements.size(); i++) {
                Span span = statements.get(i).span();
                if (span.start() <= last && first <= span.end()) {
                    touched.add(i);
                }
            }
            return touched;
        }

        private void compare(Compilation damaged, Set<Integer> touched, String what) {
            Set<Integer> harmed = new TreeSet<>(touched);
            boolean more = true;
            while (more) {
                more = false;
                for (Map.Entry<Integer, Set<Integer>> each : restsOn.entrySet()) {
                    if (each.getValue().stream().anyMatch(harmed::contains)) {
                        more |= harmed.add(each.getKey());
                    }
                }
            }
            if (harmed.stream().anyMatch(i -> i >= 0 && statements.get(i) instanceof Statement.Project)) {
                return;
            }
            Map<String, String> now = ModelText.of(damaged);
            for (Map.Entry<String, String> each : ofOthers(harmed).entrySet()) {
                if (!each.getValue().equals(now.get(each.getKey()))) {
                    lost.add(what + each.getKey() + (now.containsKey(each.getKey()) ? " changed" : " lost"));
                }
            }
        }

        /** The statement that declares what is called {@code name}: for what a pattern makes, the use of the pattern. */
        private int ownerOf(Span at, String name) {
            if (at.file().equals(file)) {
                return statementAt(at.start());
            }
            int owner = whole.evaluation().project().instances().stream()
                    .filter(i -> name.startsWith(i.path() + ".") && i.usedAt().file().equals(file))
                    .mapToInt(i -> statementAt(i.usedAt().start()))
                    .findFirst()
                    .orElse(-1);
            // What another file declares rests on the line that takes it in.
            return owner >= 0
                    ? owner
                    : java.util.stream.IntStream.range(0, statements.size())
                            .filter(i -> statements.get(i) instanceof Statement.Use)
                            .findFirst()
                            .orElse(-1);
        }

        /** What the statements that do not rest on the damaged ones declare. */
        private Map<String, String> ofOthers(Set<Integer> harmed) {
            Map<String, String> others = new HashMap<>();
            whole.joined().project().parts().forEach(part -> {
                if (!harmed.contains(ownerOf(part.nameAt(), part.name()))) {
                    put(others, "part " + part.name());
                }
            });
            whole.joined().project().boards().forEach(board -> {
                if (!harmed.contains(ownerOf(board.nameAt(), board.name()))) {
                    put(others, "board " + board.name());
                }
            });
            whole.joined().project().joints().forEach(joint -> {
                if (!harmed.contains(ownerOf(joint.at(), joint.left().name()))) {
                    put(others, "joint " + joint.name());
                }
            });
            return others;
        }

        private void put(Map<String, String> into, String key) {
            if (model.containsKey(key)) {
                into.put(key, model.get(key));
            }
        }

        void judge(String what) {
            System.out.printf("%s, %s: %d positions; %d told at the damage; findings away from it %d, values lost %d; "
                    + "%d in good order, of which %d have something to be said of them%n",
                    path.getFileName(), what, positions, told, away.size(), lost.size(), sound, soundWithFindings);
            assertThat(List.of(away, lost)).as("findings away from the cursor, and values lost")
                    .allMatch(List::isEmpty);
        }
    }
}

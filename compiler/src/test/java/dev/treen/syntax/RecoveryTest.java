package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Damages every sample in every small way. Whatever is done to it, findings stay at the damage and every statement that
 * was not touched keeps its tree and its place in it.
 */
class RecoveryTest {
    static List<String> samples() {
        return Samples.ALL;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aLostTokenHarmsOnlyItsStatement(String name) {
        Sample sample = new Sample(Samples.file(name));
        List<String> faults = new ArrayList<>();
        for (Token token : sample.tree.tokens()) {
            sample.check(token.start(), token.end(), token.start(), sample.endOfHarm(token), faults);
        }
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aLostLineHarmsOnlyItsStatements(String name) {
        Sample sample = new Sample(Samples.file(name));
        List<String> faults = new ArrayList<>();
        for (int line = 0; line + 1 < sample.file.lineCount(); line++) {
            int start = sample.file.lineStart(line);
            int end = sample.file.lineStart(line + 1);
            sample.check(start, end, sample.startOfHarm(line), end, faults);
        }
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aLineHalfTypedHarmsOnlyItsStatements(String name) {
        Sample sample = new Sample(Samples.file(name));
        List<String> faults = new ArrayList<>();
        for (int at = 0; at < sample.file.text().length(); at++) {
            int line = sample.file.lineOf(at);
            int end = sample.file.lineStart(line) + sample.file.lineText(line).length();
            sample.check(at, end, at == sample.file.lineStart(line) ? sample.startOfHarm(line) : at, end, faults);
        }
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aFileCutOffKeepsWhatStandsBeforeTheCut(String name) {
        Sample sample = new Sample(Samples.file(name));
        List<String> faults = new ArrayList<>();
        for (int line = 0; line < sample.file.lineCount(); line++) {
            int start = sample.file.lineStart(line);
            int end = sample.file.text().length();
            sample.check(start, end, start, end, faults);
        }
        assertThat(faults).isEmpty();
    }

    /** A statement as it hangs in its tree. */
    private record Place(Statement statement, Optional<Place> parent, int depth, String dump) {
        int start() {
            return statement.span().start();
        }

        int end() {
            return statement.span().end();
        }

        boolean is(Place other) {
            return start() == other.start() && depth == other.depth;
        }

        boolean isWithin(Place other) {
            return is(other) || parent.filter(p -> p.isWithin(other)).isPresent();
        }
    }

    private static List<Place> places(SyntaxTree tree) {
        List<Place> places = new ArrayList<>();
        collect(tree.statements(), Optional.empty(), 0, places);
        return places;
    }

    private static void collect(List<Statement> statements, Optional<Place> parent, int depth, List<Place> into) {
        for (Statement statement : statements) {
            Place place = new Place(statement, parent, depth, Dump.of(statement));
            into.add(place);
            statement.body().ifPresent(b -> collect(b.statements(), Optional.of(place), depth + 1, into));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(b -> collect(b.statements(), Optional.of(place), depth + 1, into));
            }
        }
    }

    private static final class Sample {
        final SourceFile file;
        final SyntaxTree tree;
        final List<Place> places;

        Sample(SourceFile file) {
            this.file = file;
            this.tree = Parser.parse(file);
            this.places = places(tree);
        }

        /**
         * A lost brace may harm the rest of its line; a lost new line behind a comment hides the line below, and a doc
         * comment then speaks of the one after that.
         */
        int endOfHarm(Token token) {
            int line = file.lineOf(token.start());
            String text = file.text().substring(token.start(), token.end());
            boolean hides = token.kind() == Token.Kind.NEW_LINE && file.lineText(line).contains("//");
            int last = !hides ? line : file.lineText(line).contains("///") ? line + 2 : line + 1;
            return hides || text.equals("{") || text.equals("}")
                    ? file.lineStart(last) + file.lineText(last).length()
                    : token.end();
        }

        /** Where a whole line with an opening brace is lost, the line above seems to own the block. */
        int startOfHarm(int line) {
            return line > 0 && file.lineText(line).contains("{") ? file.lineStart(line - 1) : file.lineStart(line);
        }

        /**
         * Takes out the text from {@code start} to {@code end} and notes what that does to statements without a token
         * between {@code from} and {@code to}.
         */
        void check(int start, int end, int from, int to, List<String> faults) {
            String text = file.text().substring(0, start) + file.text().substring(end);
            SyntaxTree damaged = Parser.parse(new SourceFile(file.name(), text));
            List<Place> touched = touched(from, to);
            String what = file.span(start, end) + " without `"
                    + file.text().substring(start, Math.min(end, start + 30)).replace("\n", "\\n") + "`: ";
            Map<Integer, Place> byStart = new LinkedHashMap<>();
            places(damaged).forEach(place -> byStart.put(place.start(), place));
            for (Place place : places) {
                if (touched.stream().noneMatch(t -> t.isWithin(place) || place.isWithin(t))) {
                    Place same = byStart.remove(moved(place.start(), start, end));
                    if (same == null
                            || !same.dump().equals(place.dump())
                            || !same.parent().map(Place::start).equals(
                                    place.parent().map(p -> moved(p.start(), start, end)))) {
                        faults.add(what + "changes " + Dump.of(place.statement()).lines().findFirst().orElse(""));
                    }
                }
            }
            Set<Integer> lines = lines(touched, from, to);
            for (Place extra : byStart.values()) {
                if (!lines.contains(lineBefore(extra.start(), start, end))
                        && places.stream().noneMatch(p -> moved(p.start(), start, end) == extra.start())) {
                    faults.add(what + "makes up " + Dump.of(extra.statement()).lines().findFirst().orElse(""));
                }
            }
            for (Finding finding : damaged.findings()) {
                if (!lines.contains(lineBefore(finding.at().start(), start, end))) {
                    faults.add(what + "reports " + finding.at() + " " + finding.headline());
                }
            }
        }

        private static int moved(int offset, int start, int end) {
            return offset < start ? offset : offset < end ? -1 : offset - (end - start);
        }

        private int lineBefore(int offset, int start, int end) {
            return file.lineOf(offset <= start ? offset : offset + (end - start));
        }

        /** The innermost statements that the text, or the tokens just beside it, belong to. */
        private List<Place> touched(int start, int end) {
            List<Place> touched = new ArrayList<>();
            List<Token> tokens = tree.tokens().stream()
                    .filter(t -> t.kind() != Token.Kind.COMMENT && t.kind() != Token.Kind.DOC_COMMENT)
                    .toList();
            for (int i = 0; i < tokens.size(); i++) {
                Token token = tokens.get(i);
                boolean hit = token.start() < end && token.end() > start;
                if (hit) {
                    innermost(token).ifPresent(touched::add);
                    boolean separates = token.kind() == Token.Kind.NEW_LINE
                            || file.text().startsWith(";", token.start());
                    if (separates && i > 0) {
                        innermost(tokens.get(i - 1)).ifPresent(touched::add);
                    }
                    int next = i + 1;
                    while (separates && next < tokens.size() && tokens.get(next).kind() == Token.Kind.NEW_LINE) {
                        next++;
                    }
                    if (separates && next < tokens.size()) {
                        innermost(tokens.get(next)).ifPresent(touched::add);
                    }
                }
            }
            boolean comment = tree.tokens().stream().anyMatch(t -> t.start() < end && t.end() > start
                    && (t.kind() == Token.Kind.COMMENT || t.kind() == Token.Kind.DOC_COMMENT));
            if (comment) {
                places.stream().filter(p -> p.start() >= start).findFirst().ifPresent(touched::add);
                places.stream().filter(p -> p.start() < start && p.end() >= start).reduce((a, b) -> b)
                        .ifPresent(touched::add);
                places.stream().filter(p -> p.end() < start).reduce((a, b) -> b).ifPresent(touched::add);
            }
            return touched;
        }

        private Optional<Place> innermost(Token token) {
            return places.stream()
                    .filter(p -> p.start() <= token.start() && token.end() <= p.end())
                    .reduce((a, b) -> b);
        }

        private Set<Integer> lines(List<Place> touched, int start, int end) {
            Set<Integer> lines = new TreeSet<>();
            for (int line = file.lineOf(start); line <= file.lineOf(end); line++) {
                lines.add(line);
            }
            for (Token token : tree.tokens()) {
                if (token.start() < end && token.end() > start) {
                    for (int line = file.lineOf(token.start()); line <= file.lineOf(token.end()); line++) {
                        lines.add(line);
                    }
                }
            }
            for (Place place : touched) {
                boolean brace = tree.tokens().stream().anyMatch(t -> t.kind() == Token.Kind.BRACKET
                        && t.start() < end && t.end() > start && innermost(t).filter(place::is).isPresent());
                int last = brace || place.statement() instanceof Statement.When || place.statement().body().isEmpty()
                        ? place.end()
                        : place.statement().body().get().span().start();
                for (int line = file.lineOf(place.start()); line <= file.lineOf(last); line++) {
                    lines.add(line);
                }
            }
            return lines;
        }
    }
}

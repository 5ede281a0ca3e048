package dev.treen.syntax;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.grammar.TreenLexer;
import dev.treen.grammar.TreenParser.LineContext;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.HeadRepair.Kind;
import dev.treen.syntax.HeadRepair.Repaired;
import dev.treen.syntax.LineParser.Attempt;
import dev.treen.syntax.RawStatement.RawBlock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.CommonToken;
import org.jspecify.annotations.Nullable;

/** Reads the heads of a file one by one and builds its tree. */
final class TreeBuilder {
    /** How deep an expression may go: operators, members, calls and brackets within one value. */
    static final int DEEPEST = 256;
    private static final Set<Integer> PAIRS = Set.of(TreenLexer.INTO, TreenLexer.TO);
    private static final Set<Integer> ENDS_PATH = Set.of(
            TreenLexer.INTO, TreenLexer.TO, TreenLexer.COMMA, TreenLexer.AS);

    private final SourceFile file;
    private final Scanned scanned;
    private final FindingList findings;
    private final ExprReader exprs;
    private final LineParser parser = new LineParser();
    private final HeadRepair repair = new HeadRepair(parser);

    TreeBuilder(SourceFile file, Scanned scanned, FindingList findings, BitSet names) {
        this.file = file;
        this.scanned = scanned;
        this.findings = findings;
        this.exprs = new ExprReader(file, findings, names);
    }

    List<Statement> build(List<RawStatement> raw) {
        List<Statement> statements = new ArrayList<>(raw.size());
        for (RawStatement statement : raw) {
            statements.add(build(statement));
        }
        return List.copyOf(statements);
    }

    private Statement build(RawStatement raw) {
        List<CommonToken> head = scanned.read().subList(raw.from, raw.to);
        Optional<Block> body = block(raw.body);
        Optional<Block> otherwise = block(raw.otherwise);
        Span headSpan = headSpan(raw, head);
        Span span = headSpan;
        span = body.isPresent() ? span.to(body.get().span()) : span;
        span = otherwise.isPresent() ? span.to(otherwise.get().span()) : span;
        if (head.isEmpty()) {
            report(Finding.of(
                    SyntaxFindings.UNFINISHED_LINE,
                    headSpan,
                    "a name is missing before this block")
                    .label("opens a block without a name"));
            return new Statement.Broken(span, body);
        }
        HeadReader.Surroundings around = new HeadReader.Surroundings(span, body, otherwise, doc(raw), false);
        int deep = tooDeepFrom(head);
        if (deep >= 0) {
            report(Finding.of(
                    SyntaxFindings.NESTED_TOO_DEEP,
                    span(head.get(deep)),
                    "a value may go " + DEEPEST + " deep in operators and brackets")
                    .label("is deeper, and the line is passed over"));
            return cutShort(head.subList(0, Math.min(2, head.size())), around);
        }
        return switch (parser.read(head)) {
            case Attempt.Good(LineContext line) -> read(line, around);
            case Attempt.Stopped(int at) -> repaired(head, at, around);
        };
    }

    private Statement read(LineContext line, HeadReader.Surroundings around) {
        return new HeadReader(exprs, around).visitLine(line);
    }

    private Statement repaired(List<CommonToken> head, int at, HeadReader.Surroundings around) {
        int headStart = head.getFirst().getStartIndex();
        int headEnd = head.getLast().getStopIndex() + 1;
        boolean reported = findings.hasWithin(headStart, headEnd);
        if (findings.isFull() && !reported) {
            findings.addUnworded();
            return cutShort(head.subList(0, Math.min(2, head.size())), around);
        }
        Optional<Repaired> found = repair.repair(head, at);
        if (!reported) {
            report(found.filter(r -> r.kind() == Kind.PUT_IN)
                    .map(r -> putIn(head, r))
                    .orElseGet(() -> outOfPlace(head, at)));
        }
        return found.map(r -> read(r.line(), lost(around, r.kind() != Kind.PUT_IN)))
                .orElseGet(() -> new Statement.Broken(around.span(), around.body()));
    }

    private Statement cutShort(List<CommonToken> beginning, HeadReader.Surroundings around) {
        return repair.complete(beginning, beginning.size())
                .map(r -> read(r.line(), lost(around, true)))
                .orElseGet(() -> new Statement.Broken(around.span(), around.body()));
    }

    private static HeadReader.Surroundings lost(HeadReader.Surroundings around, boolean lost) {
        return new HeadReader.Surroundings(around.span(), around.body(), around.otherwise(), around.doc(), lost);
    }

    private Finding.Builder putIn(List<CommonToken> head, Repaired repaired) {
        return switch (repaired.type()) {
            case TreenLexer.HOLE -> {
                boolean value = Expected.isValue(repair.expected(head, repaired.at()));
                yield missing(head, repaired.at(), value ? "a value" : "a name");
            }
            case TreenLexer.TEXT -> missing(head, repaired.at(), "text in quotes");
            default -> {
                String what = Expected.written(repaired.type());
                String text = what.substring(1, what.length() - 1);
                boolean closes = text.equals(")") || text.equals("]");
                Finding.Builder finding = missing(head, repaired.at(), what);
                Edit edit = new Edit(span(head.get(repaired.at() - 1)).endPoint(), closes ? text : " " + text);
                yield finding.remedy(Remedy.safe("write " + what, edit));
            }
        };
    }

    private Finding.Builder missing(List<CommonToken> head, int at, String what) {
        Span before = span(head.get(at - 1));
        return Finding.of(
                SyntaxFindings.UNFINISHED_LINE,
                before.endPoint(),
                what + " is missing after `" + shown(before) + "`")
                .label(what + " belongs here");
    }

    private Finding.Builder outOfPlace(List<CommonToken> head, int at) {
        String wanted = Expected.phrase(repair.expected(head, at));
        if (at >= head.size()) {
            return missing(head, head.size(), wanted.isEmpty() ? "something" : wanted);
        }
        Span place = span(head.get(at));
        int type = head.get(at).getType();
        if (at == 0 && type == TreenLexer.ELSE && head.size() > 1 && head.get(1).getType() == TreenLexer.WHEN) {
            return Finding.of(SyntaxFindings.UNREADABLE_LINE, place, "`else` wants a block of its own")
                    .label("what follows is no block")
                    .remedy(Remedy.choice("put the next choice inside it: `else { when … { … } }`"));
        }
        if (at == 0 && type == TreenLexer.ELSE) {
            return Finding.of(SyntaxFindings.UNREADABLE_LINE, place, "this `else` follows no `when` with a block")
                    .label("belongs to no `when`");
        }
        Finding.Builder finding = Finding.of(SyntaxFindings.UNREADABLE_LINE, place,
                "`" + shown(place) + "` cannot stand here");
        if (at == 1 && type == TreenLexer.ASSIGN) {
            Span start = file.span(span(head.getFirst()).start(), span(head.getFirst()).start());
            finding.remedy(Remedy.choice("take out the `=`, if it sets a property", new Edit(place, "")))
                    .remedy(Remedy.choice("write `let` before it, if it gives a value a name",
                            new Edit(start, "let ")));
        }
        if (type == TreenLexer.COMMA && head.getFirst().getType() == TreenLexer.JOINT) {
            eachInto(head, at).ifPresent(finding::remedy);
        }
        return at == 0
                ? finding.label("begins the line, where a name should be")
                : wanted.isEmpty() ? finding : finding.label("stands where " + wanted + " should be");
    }

    /** {@code joint housing left, right into top}: every part on the left is written with what it enters. */
    private Optional<Remedy> eachInto(List<CommonToken> head, int comma) {
        int word = comma;
        while (word < head.size() && !PAIRS.contains(head.get(word).getType())) {
            word++;
        }
        int last = word + 1;
        while (last + 1 < head.size() && !ENDS_PATH.contains(head.get(last + 1).getType())) {
            last++;
        }
        boolean more = last + 1 < head.size() && head.get(last + 1).getType() != TreenLexer.AS;
        if (last >= head.size() || more) {
            return Optional.empty();
        }
        Span all = span(head.get(2)).to(span(head.get(last)));
        String lefts = file.text().substring(all.start(), span(head.get(word)).start());
        String enters = " " + file.text().substring(span(head.get(word)).start(), all.end());
        String each = Arrays.stream(lefts.split(",")).map(left -> left.strip() + enters)
                .collect(Collectors.joining(", "));
        return Optional
                .of(Remedy.safe("write each part with what it is joined to: `" + each + "`", new Edit(all, each)));
    }

    private static String shown(Span span) {
        String text = Hidden.shown(span.text());
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    private Optional<Block> block(@Nullable RawBlock raw) {
        return raw == null
                ? Optional.empty()
                : Optional.of(new Block(file.span(raw.start, raw.end), build(raw.statements)));
    }

    private Span headSpan(RawStatement raw, List<CommonToken> head) {
        return head.isEmpty()
                ? span(scanned.read().get(raw.from))
                : span(head.getFirst()).to(span(head.getLast()));
    }

    private Span span(CommonToken token) {
        return file.span(token.getStartIndex(), token.getStopIndex() + 1);
    }

    private void report(Finding.Builder finding) {
        findings.add(finding.build());
    }

    /** The index of the token that takes a head beyond {@link #DEEPEST}, or −1. */
    private static int tooDeepFrom(List<CommonToken> head) {
        Deque<Integer> outer = new ArrayDeque<>(List.of(0));
        int depth = 0;
        for (int i = 0; i < head.size() && head.size() > DEEPEST; i++) {
            CommonToken token = head.get(i);
            switch (token.getType()) {
                case TreenLexer.COMMA, TreenLexer.ASSIGN -> depth = outer.getLast();
                case TreenLexer.LPAREN, TreenLexer.LBRACK -> outer.addLast(++depth);
                case TreenLexer.RPAREN, TreenLexer.RBRACK -> {
                    // What follows may hang above what the brackets hold, so the depth stays.
                    if (outer.size() > 1) {
                        outer.removeLast();
                    }
                }
                case TreenLexer.NUMBER, TreenLexer.FRACTION, TreenLexer.UNIT, TreenLexer.TEXT, TreenLexer.OPEN_TEXT,
                        TreenLexer.LET -> {
                    // An operand goes no deeper.
                }
                default -> depth += TokenReader.isWord(token) && token.getType() != TreenLexer.X ? 0 : 1;
            }
            if (depth > DEEPEST) {
                return i;
            }
        }
        return -1;
    }

    /** The `///` lines right above a statement, or the `///` comment behind its head. */
    private String doc(RawStatement raw) {
        List<CommonToken> all = scanned.all();
        int first = scanned.placeOf(scanned.read().get(raw.from));
        List<String> lines = new ArrayList<>();
        int i = first - 1;
        while (i >= 1
                && all.get(i).getType() == TreenLexer.NEW_LINE
                && all.get(i - 1).getType() == TreenLexer.DOC_COMMENT
                && (i == 1 || all.get(i - 2).getType() == TreenLexer.NEW_LINE)) {
            lines.addFirst(docText(all.get(i - 1)));
            i -= 2;
        }
        int next = scanned.placeOf(scanned.read().get(raw.to - 1)) + 1;
        while (next < all.size()
                && (all.get(next).getType() == TreenLexer.LBRACE || all.get(next).getType() == TreenLexer.SEMI)) {
            next++;
        }
        if (next < all.size() && all.get(next).getType() == TreenLexer.DOC_COMMENT) {
            lines.add(docText(all.get(next)));
        }
        return String.join("\n", lines);
    }

    private static String docText(CommonToken comment) {
        String text = comment.getText().substring(3);
        return (text.startsWith(" ") ? text.substring(1) : text).stripTrailing();
    }
}

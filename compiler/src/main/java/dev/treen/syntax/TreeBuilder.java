package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.grammar.TreenLexer;
import dev.treen.grammar.TreenParser.LineContext;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.HeadRepair.Kind;
import dev.treen.syntax.HeadRepair.Repaired;
import dev.treen.syntax.LineParser.Attempt;
import dev.treen.syntax.RawStatement.RawBlock;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;
import org.jspecify.annotations.Nullable;

/** Reads the heads of a file one by one and builds its tree. */
final class TreeBuilder {
    /** How deep an expression may go: operators, members, calls and brackets within one value. */
    static final int DEEPEST = 256;

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
                    "a name is missing before this block"));
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
            report(found.filter(r -> r.kind() == Kind.PUT_IN).isPresent()
                    ? missing(head, found.get().at())
                    : outOfPlace(head, at));
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

    private Finding.Builder missing(List<CommonToken> head, int at) {
        String wanted = Expected.phrase(repair.expected(head, at));
        Span before = span(head.get(Math.max(0, at - 1)));
        Span place = at == 0 ? file.span(before.start(), before.start()) : before.endPoint();
        String what = wanted.isEmpty() ? "something" : wanted;
        return Finding.of(SyntaxFindings.UNFINISHED_LINE, place, what + " is missing after `" + shown(before) + "`")
                .label(what + " belongs here");
    }

    private Finding.Builder outOfPlace(List<CommonToken> head, int at) {
        if (at >= head.size()) {
            return missing(head, head.size());
        }
        Span place = span(head.get(at));
        String wanted = Expected.phrase(repair.expected(head, at));
        Finding.Builder finding = Finding.of(SyntaxFindings.UNREADABLE_LINE, place,
                "`" + shown(place) + "` cannot stand here");
        return wanted.isEmpty() ? finding : finding.label("stands where " + wanted + " should be");
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
        if (head.size() <= DEEPEST) {
            return -1;
        }
        int brackets = 0;
        int depth = 0;
        for (int i = 0; i < head.size(); i++) {
            int type = head.get(i).getType();
            switch (type) {
                case TreenLexer.COMMA -> depth = brackets;
                case TreenLexer.LPAREN, TreenLexer.LBRACK -> {
                    brackets++;
                    depth++;
                }
                case TreenLexer.RPAREN, TreenLexer.RBRACK -> brackets = Math.max(0, brackets - 1);
                default -> depth++;
            }
            if (depth > 2 * DEEPEST) {
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

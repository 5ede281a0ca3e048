package dev.treen.syntax;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.grammar.TreenLexer;
import dev.treen.quantity.NumberText;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Reads a text as tokens. What only its neighbours can tell is settled here: which word is a unit, that {@code 900x140}
 * is a size, and that {@code a/3/4} divides twice while {@code 3/4} is one figure.
 */
final class TokenReader {
    private static final Set<String> UNITS = Arrays.stream(Unit.values())
            .flatMap(unit -> unit.spellings().stream())
            .collect(Collectors.toUnmodifiableSet());
    private static final String UNIT_SIGNS = "\"'°º′″”’#";
    private static final int FIRST_RESERVED = TreenLexer.AND;
    private static final int LAST_RESERVED = TreenLexer.ELSE;

    private final SourceFile file;
    private final String text;
    private final FindingList findings;
    private final UnitStream stream;
    private final TreenLexer lexer;
    private int line;
    private final List<CommonToken> all = new ArrayList<>();
    private final List<CommonToken> read = new ArrayList<>();

    private TokenReader(SourceFile file, FindingList findings) {
        this.file = file;
        this.text = file.text();
        this.findings = findings;
        this.stream = new UnitStream(file.name(), text);
        this.lexer = new TreenLexer(stream);
        lexer.removeErrorListeners();
    }

    /** The tokens of a file. */
    static Scanned scan(SourceFile file, FindingList findings) {
        TokenReader reader = new TokenReader(file, findings);
        for (Token token = reader.lexer.nextToken(); token.getType() != Token.EOF; token = reader.lexer.nextToken()) {
            reader.take((CommonToken) token);
        }
        return Brackets.joinLines(new Scanned(reader.all, reader.read));
    }

    private void take(CommonToken token) {
        settle(token);
        while (line + 1 < file.lineCount() && file.lineStart(line + 1) <= token.getStartIndex()) {
            line++;
        }
        token.setLine(line);
        switch (token.getType()) {
            case TreenLexer.DOC_COMMENT -> all.add(token);
            case TreenLexer.COMMENT -> takeComment(token);
            case TreenLexer.OPEN_COMMENT -> {
                report(Finding.of(SyntaxFindings.COMMENT_NOT_CLOSED, span(token), "this comment is never closed")
                        .label("is read as a comment up to the end of its line")
                        .remedy(Remedy.safe("close it with `*/`", new Edit(span(token).endPoint(), " */"))));
                all.add(token);
            }
            case TreenLexer.STRAY -> takeStray(token);
            default -> keep(token);
        }
    }

    private void keep(CommonToken token) {
        all.add(token);
        read.add(token);
    }

    /** A comment over several lines ends the statement before it, as a new line does. */
    private void takeComment(CommonToken token) {
        all.add(token);
        boolean many = text.charAt(token.getStartIndex() + 1) == '*'
                && file.lineOf(token.getStartIndex()) != file.lineOf(token.getStopIndex());
        if (many) {
            CommonToken line = new CommonToken(TreenLexer.NEW_LINE, "");
            line.setStartIndex(token.getStopIndex() + 1);
            line.setStopIndex(token.getStopIndex());
            read.add(line);
        }
    }

    private void takeStray(CommonToken token) {
        if (!all.isEmpty()) {
            CommonToken last = all.getLast();
            if (last.getType() == TreenLexer.STRAY && isGlued(last, token)) {
                last.setStopIndex(token.getStopIndex());
                return;
            }
        }
        all.add(token);
        char c = text.charAt(token.getStartIndex());
        boolean hidden = Hidden.is(c);
        Span at = span(token);
        report(Finding.of(
                hidden ? SyntaxFindings.HIDDEN_CHARACTER : SyntaxFindings.STRAY_CHARACTER,
                at,
                "`" + Hidden.shown(at.text()) + "` means nothing here")
                .label("is passed over")
                .remedy(Remedy.safe("take it out", new Edit(at, ""))));
    }

    /** Changes the type, or the end, of a token by what stands around it. */
    private void settle(CommonToken token) {
        int type = token.getType();
        if (type == TreenLexer.FRACTION) {
            settleFraction(token);
        } else if (type == TreenLexer.OPEN_TEXT && !isInchMark(token)) {
            settleOpenText(token);
        }
        if (token.getType() == TreenLexer.NUMBER || token.getType() == TreenLexer.FRACTION) {
            reportLongNumber(token);
        } else if (!read.isEmpty()) {
            settleAfter(read.getLast(), token);
        }
        if (token.getType() == TreenLexer.NAME) {
            reportHidden(token);
        }
    }

    private void settleFraction(CommonToken token) {
        boolean divides = !read.isEmpty() && read.getLast().getType() == TreenLexer.OVER;
        int next = token.getStopIndex() + 1;
        boolean decimal = next + 1 < text.length() && text.charAt(next) == '.' && isDigit(text.charAt(next + 1));
        if (divides || decimal) {
            cut(token, TreenLexer.NUMBER, text.indexOf('/', token.getStartIndex()));
        }
    }

    /** Text without an end stops before the braces that close its line: they are seldom meant as text. */
    private void settleOpenText(CommonToken token) {
        int end = token.getStopIndex() + 1;
        while (end > token.getStartIndex() + 1 && " \t{}".indexOf(text.charAt(end - 1)) >= 0) {
            end--;
        }
        cut(token, TreenLexer.OPEN_TEXT, end);
        Span at = file.span(token.getStartIndex(), end);
        report(Finding.of(SyntaxFindings.TEXT_NOT_CLOSED, at, "this text has no closing quote")
                .label("is read as text up to here")
                .remedy(Remedy.safe("close it with `\"`", new Edit(at.endPoint(), "\""))));
    }

    private boolean isInchMark(CommonToken token) {
        return !read.isEmpty() && isFigure(read.getLast()) && isGlued(read.getLast(), token);
    }

    private void settleAfter(CommonToken last, CommonToken token) {
        boolean figure = isFigure(last);
        if (isGlued(last, token) && (figure || last.getType() == TreenLexer.UNIT)) {
            settleGlued(figure, token);
        } else if (figure
                && (token.getType() == TreenLexer.PERCENT || isWord(token))
                && UNITS.contains(token.getText())
                && mayEndFigure(token.getStopIndex() + 1)) {
            token.setType(TreenLexer.UNIT);
        }
    }

    private void settleGlued(boolean figure, CommonToken token) {
        int start = token.getStartIndex();
        if (isWord(token)) {
            String word = token.getText();
            int x = sizeMark(word);
            if (x == 0) {
                cut(token, TreenLexer.X, start + 1);
            } else if (figure && x > 0) {
                cut(token, TreenLexer.UNIT, start + x);
            } else if (figure && !word.equals("x")) {
                token.setType(TreenLexer.UNIT);
                if (!UNITS.contains(word)) {
                    reportUnit(token);
                }
            }
        } else if (figure && token.getType() == TreenLexer.PERCENT) {
            token.setType(TreenLexer.UNIT);
        } else if (figure && UNIT_SIGNS.indexOf(text.charAt(start)) >= 0) {
            boolean scale = "°º".indexOf(text.charAt(start)) >= 0
                    && start + 1 < text.length()
                    && "CcFf".indexOf(text.charAt(start + 1)) >= 0;
            cut(token, TreenLexer.UNIT, scale ? start + 2 : start + 1);
            reportUnit(token);
        }
    }

    /** Where in {@code mmx140} the {@code x} of a size stands: nothing, or a unit, before it and a digit behind it. */
    private static int sizeMark(String word) {
        for (int i = word.indexOf('x'); i >= 0 && i + 1 < word.length(); i = word.indexOf('x', i + 1)) {
            if (isDigit(word.charAt(i + 1)) && (i == 0 || UNITS.contains(word.substring(0, i)))) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a word that stands apart from the figure before it can be its unit: not where it begins a longer name. */
    private boolean mayEndFigure(int offset) {
        int next = offset;
        while (next < text.length() && (text.charAt(next) == ' ' || text.charAt(next) == '\t')) {
            next++;
        }
        return next >= text.length()
                || switch (text.charAt(next)) {
                    case '(', '[' -> false;
                    case '.' -> next + 1 < text.length() && text.charAt(next + 1) == '.';
                    default -> true;
                };
    }

    private void reportUnit(CommonToken token) {
        Span at = span(token);
        List<String> near = Unit.suggestions(at.text());
        Finding.Builder finding = Finding.of(
                SyntaxFindings.UNKNOWN_UNIT, at, "`" + Hidden.shown(at.text()) + "` is not a unit that Treen knows")
                .label(near.isEmpty() ? "is not a unit" : "is written " + orList(near));
        if (near.size() == 1) {
            finding.remedy(Remedy.safe("write `" + near.getFirst() + "`", new Edit(at, near.getFirst())));
        } else {
            near.stream()
                    .limit(3)
                    .forEach(unit -> finding.remedy(Remedy.choice("write `" + unit + "`", new Edit(at, unit))));
        }
        report(finding);
    }

    private static String orList(List<String> words) {
        return words.stream().map(word -> "`" + word + "`").collect(Collectors.joining(" or "));
    }

    private void reportLongNumber(CommonToken token) {
        long digits = token.getText().chars().filter(c -> isDigit((char) c)).count();
        if (digits > NumberText.MAX_DIGITS) {
            report(Finding.of(
                    SyntaxFindings.NUMBER_TOO_LONG,
                    span(token),
                    "a number may have " + NumberText.MAX_DIGITS + " digits at most")
                    .label("has " + digits));
        }
    }

    private void reportHidden(CommonToken token) {
        String name = token.getText();
        if (Hidden.in(name)) {
            Span at = span(token);
            report(Finding.of(
                    SyntaxFindings.HIDDEN_CHARACTER,
                    at,
                    "the name `" + Hidden.shown(name) + "` has characters that cannot be seen")
                    .label("is read as `" + Hidden.without(name) + "`")
                    .because("two names that look alike could be two parts")
                    .remedy(Remedy.safe("take them out", new Edit(at, Hidden.without(name)))));
        }
    }

    /** Ends {@code token} before {@code end} and lets the lexer go on from there. */
    private void cut(CommonToken token, int type, int end) {
        token.setType(type);
        token.setStopIndex(end - 1);
        stream.seek(end);
        lexer._hitEOF = false;
    }

    private void report(Finding.Builder finding) {
        findings.add(finding.build());
    }

    private Span span(CommonToken token) {
        return file.span(token.getStartIndex(), token.getStopIndex() + 1);
    }

    private static boolean isFigure(CommonToken token) {
        return token.getType() == TreenLexer.NUMBER || token.getType() == TreenLexer.FRACTION;
    }

    private static boolean isGlued(CommonToken left, CommonToken right) {
        return left.getStopIndex() + 1 == right.getStartIndex();
    }

    /** Whether it is a name or a contextual word. */
    static boolean isWord(Token token) {
        int type = token.getType();
        return type == TreenLexer.NAME || (type >= TreenLexer.PROJECT && type < FIRST_RESERVED);
    }

    /** Whether it is one of the words that expressions need. */
    static boolean isReserved(Token token) {
        return token.getType() >= FIRST_RESERVED && token.getType() <= LAST_RESERVED;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}

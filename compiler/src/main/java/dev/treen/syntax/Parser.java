package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.grammar.TreenLexer;
import dev.treen.source.SourceFile;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;

/** Reads a file into its tree. Reading never fails: what cannot be read becomes a finding beside what can. */
public final class Parser {
    /** The most characters that one file may have. */
    public static final int MOST_CHARACTERS = 4 * 1024 * 1024;

    private Parser() {
    }

    /** The tree of a file, with everything that reading it found. */
    public static SyntaxTree parse(SourceFile file) {
        Optional<SyntaxTree> refused = refused(file);
        if (refused.isPresent()) {
            return refused.get();
        }
        FindingList findings = new FindingList();
        Scanned scanned = TokenReader.scan(file, findings);
        Read read = read(file, scanned, BlockReader.Balance.of(scanned.read()), findings);
        return new SyntaxTree(file, file.span(0, 0), read.statements(), read.tokens(), read.findings());
    }

    /** What was read of a text or a piece of one, and the balance for what follows. */
    record Read(List<Statement> statements, List<Token> tokens, List<Finding> findings, BlockReader.Balance rest) {}

    /** Reads what has been scanned; {@code findings} has what scanning found. */
    static Read read(SourceFile file, Scanned scanned, BlockReader.Balance balance, FindingList findings) {
        BlockReader.Split split = BlockReader.split(file, scanned.read(), balance, findings);
        BitSet names = new BitSet();
        List<Statement> statements = new TreeBuilder(file, scanned, findings, names).build(split.statements());
        return new Read(statements, tokens(scanned.all(), names), findings.sorted(), split.rest());
    }

    /** What is said of a file that is not read at all. */
    static Optional<SyntaxTree> refused(SourceFile file) {
        String text = file.text();
        if (text.length() > MOST_CHARACTERS) {
            return Optional
                    .of(refused(file, SyntaxFindings.FILE_TOO_LARGE, 0, 0, "this file is longer than Treen reads: "
                            + text.length() + " characters, and " + MOST_CHARACTERS + " are the most"));
        }
        int nul = text.indexOf('\0');
        return nul < 0
                ? Optional.empty()
                : Optional.of(refused(file, SyntaxFindings.NOT_TEXT, nul, nul + 1, "this file is not plain text"));
    }

    private static SyntaxTree refused(SourceFile file, FindingKind kind, int start, int end, String headline) {
        Finding finding = Finding.of(kind, file.span(start, end), headline).build();
        return new SyntaxTree(file, file.span(0, 0), List.of(), List.of(), List.of(finding));
    }

    private static List<Token> tokens(List<CommonToken> all, BitSet names) {
        List<Token> tokens = new ArrayList<>(all.size());
        for (CommonToken token : all) {
            int start = token.getStartIndex();
            Token.Kind kind = kind(token, names.get(start));
            tokens.add(new Token(kind, start, token.getStopIndex() + 1));
        }
        return List.copyOf(tokens);
    }

    private static Token.Kind kind(CommonToken token, boolean isName) {
        if (TokenReader.isWord(token)) {
            return isName || token.getType() == TreenLexer.NAME ? Token.Kind.NAME : Token.Kind.WORD;
        }
        if (TokenReader.isReserved(token)) {
            return Token.Kind.RESERVED;
        }
        return switch (token.getType()) {
            case TreenLexer.NUMBER, TreenLexer.FRACTION -> Token.Kind.NUMBER;
            case TreenLexer.UNIT -> Token.Kind.UNIT;
            case TreenLexer.TEXT, TreenLexer.OPEN_TEXT -> Token.Kind.TEXT;
            case TreenLexer.LBRACE, TreenLexer.RBRACE, TreenLexer.LPAREN, TreenLexer.RPAREN, TreenLexer.LBRACK,
                    TreenLexer.RBRACK ->
                Token.Kind.BRACKET;
            case TreenLexer.NEW_LINE -> Token.Kind.NEW_LINE;
            case TreenLexer.DOC_COMMENT -> Token.Kind.DOC_COMMENT;
            case TreenLexer.COMMENT, TreenLexer.OPEN_COMMENT -> Token.Kind.COMMENT;
            case TreenLexer.STRAY -> Token.Kind.STRAY;
            default -> Token.Kind.MARK;
        };
    }
}

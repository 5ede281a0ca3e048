package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.BlockReader.Balance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads one version of a text after the other, and takes over what the version before says of statements that have not
 * changed. What it gives is what {@link Parser} gives of the same text; only the spans of unchanged statements are the
 * same ones as before, moved to where the statements lie now. So there is one newest version, and spans of an older one
 * that are gone from it stay where they were.
 */
public final class EditedText {
    private final SourceFile top;
    private SourceFile last;
    private List<Piece> pieces = List.of();
    private Map<String, Piece> joined = Map.of();

    /** A text under the name by which people know it, before its first version is read. */
    public EditedText(String name) {
        top = SourceFile.piece(name, "");
        last = new SourceFile(name, "");
    }

    /** The tree of the newest version. */
    public synchronized SyntaxTree read(SourceFile file) {
        Optional<SyntaxTree> refused = Parser.refused(file);
        if (refused.isPresent()) {
            return refused.get();
        }
        List<Piece> all = cut(file);
        last = file;
        pieces = all;
        top.lies(file, 0);
        return inPieces(all).flatMap(reads -> put(file, reads)).orElseGet(() -> whole(file));
    }

    private SyntaxTree whole(SourceFile file) {
        SyntaxTree tree = Parser.parse(file);
        return new SyntaxTree(file, new Span(top, 0, 0), tree.statements(), tree.tokens(), tree.findings());
    }

    /** A piece and what was read of it. */
    private record Part(Piece piece, Parser.Read read) {}

    /** The pieces as they are read, where each can be read alone. */
    private Optional<List<Part>> inPieces(List<Piece> all) {
        boolean leftOpen = false;
        boolean closedFirst = false;
        int depth = 0;
        int lowest = 0;
        for (Piece piece : all) {
            if (piece.openComment()) {
                return Optional.empty();
            }
            leftOpen |= piece.bracketLeftOpen();
            closedFirst |= piece.bracketClosedFirst();
            lowest = Math.min(lowest, depth + piece.lowest());
            depth += piece.depth();
        }
        if (leftOpen && closedFirst) {
            return Optional.empty();
        }
        Balance balance = new Balance(depth == 0 && lowest == 0, Math.max(0, -depth));
        List<Part> reads = new ArrayList<>(all.size());
        for (Piece piece : balance.balanced() ? closed(all) : all) {
            Parser.Read read = piece.read(balance);
            reads.add(new Part(piece, read));
            balance = piece.isSteady() ? balance : read.rest();
        }
        return Optional.of(reads);
    }

    /** Pieces of a text whose braces balance, those put together between which a block goes on. */
    private List<Piece> closed(List<Piece> all) {
        Map<String, Piece> made = new HashMap<>();
        List<Piece> closed = new ArrayList<>(all.size());
        for (int i = 0; i < all.size(); i++) {
            Piece first = all.get(i);
            int depth = first.depth();
            int end = first.end();
            while (depth > 0) {
                i++;
                depth += all.get(i).depth();
                end = all.get(i).end();
            }
            if (end == first.end()) {
                closed.add(first);
            } else {
                String text = last.text().substring(first.start(), end);
                Piece known = made.containsKey(text) ? null : joined.get(text);
                Piece piece = known == null ? new Piece(last.name(), text, first.start()) : known.at(first.start());
                made.put(text, piece);
                closed.add(piece);
            }
        }
        joined = made;
        return closed;
    }

    private Optional<SyntaxTree> put(SourceFile file, List<Part> parts) {
        List<Statement> statements = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Part part : parts) {
            statements.addAll(part.read().statements());
            findings.addAll(part.read().findings());
        }
        boolean alone = findings.size() < FindingList.MOST
                && findings.stream().noneMatch(each -> each.kind().equals(SyntaxFindings.NESTED_TOO_DEEP));
        if (!alone) {
            return Optional.empty();
        }
        for (Part part : parts) {
            part.piece().source().lies(file, part.piece().start());
        }
        List<Token> tokens = new MovedTokens(
                parts.stream().map(part -> part.read().tokens()).toList(),
                parts.stream().mapToInt(part -> part.piece().start()).toArray());
        return Optional.of(new SyntaxTree(
                file, new Span(top, 0, 0), List.copyOf(statements), tokens, List.copyOf(findings)));
    }

    /** The pieces of a text, those of the version before where they have not changed. */
    private List<Piece> cut(SourceFile file) {
        String now = file.text();
        String before = last.text();
        int shorter = Math.min(now.length(), before.length());
        int same = 0;
        while (same < shorter && now.charAt(same) == before.charAt(same)) {
            same++;
        }
        int rest = 0;
        while (rest < shorter - same
                && now.charAt(now.length() - 1 - rest) == before.charAt(before.length() - 1 - rest)) {
            rest++;
        }
        int moved = now.length() - before.length();
        List<Piece> old = new ArrayList<>(pieces.size());
        for (Piece piece : pieces) {
            if (piece.end() <= same) {
                old.add(piece);
            } else if (piece.start() >= before.length() - rest) {
                old.add(piece.at(piece.start() + moved));
            }
        }
        int next = 0;
        List<Piece> all = new ArrayList<>(pieces.size() + 2);
        int start = 0;
        for (int line = 1; line <= file.lineCount(); line++) {
            boolean ends = line == file.lineCount() || begins(file, line);
            if (ends) {
                int end = line == file.lineCount() ? now.length() : file.lineStart(firstOfDoc(file, line));
                if (end > start) {
                    while (next < old.size() && old.get(next).start() < start) {
                        next++;
                    }
                    boolean known = next < old.size() && old.get(next).start() == start && old.get(next).end() == end;
                    all.add(known ? old.get(next) : new Piece(file.name(), now.substring(start, end), start));
                    start = end;
                }
            }
        }
        return all;
    }

    /** Whether a statement can begin with {@code line}: a word stands at its very beginning, and not one that goes on. */
    private static boolean begins(SourceFile file, int line) {
        int start = file.lineStart(line);
        String text = file.text();
        return start < text.length()
                && (Character.isLetter(text.charAt(start)) || text.charAt(start) == '_')
                && !text.startsWith("else", start);
    }

    /** The first of the lines above {@code line} that document it, or the line itself. */
    private static int firstOfDoc(SourceFile file, int line) {
        int first = line;
        while (first > 0 && isDoc(file, first - 1)) {
            first--;
        }
        return first;
    }

    private static boolean isDoc(SourceFile file, int line) {
        String text = file.text();
        int at = file.lineStart(line);
        int end = file.lineStart(line + 1);
        while (at < end && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at + 3 <= end && text.startsWith("///", at);
    }
}

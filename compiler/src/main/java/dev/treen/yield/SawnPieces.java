package dev.treen.yield;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Saws a board on paper, cut by cut, for the checker. */
final class SawnPieces {
    private SawnPieces() {
    }

    /** The loose pieces after all cuts in their order; empty if one of them does not go through a piece in hand. */
    static Optional<Set<Rect>> after(Rect board, List<BoardLayout.Step> steps, long kerf) {
        Set<Rect> loose = new HashSet<>();
        loose.add(board);
        for (BoardLayout.Step step : steps) {
            Rect from = step.from();
            boolean across = step.direction() == CutTree.Direction.ACROSS;
            long start = across ? from.x() : from.y();
            long end = across ? from.right() : from.top();
            // The blade may hang over an edge, but must take some wood.
            boolean through = step.position() > start - Math.max(kerf, 1)
                    && step.position() < end + (kerf == 0 ? 0 : 1);
            if (!through || !loose.remove(from)) {
                return Optional.empty();
            }
            long left = Math.max(0, Math.min(step.position(), end) - start);
            long right = Math.max(0, end - step.position() - kerf);
            Rect first = across
                    ? new Rect(start, from.y(), left, from.width())
                    : new Rect(from.x(), start, from.length(), left);
            Rect second = across
                    ? new Rect(end - right, from.y(), right, from.width())
                    : new Rect(from.x(), end - right, from.length(), right);
            add(loose, first);
            add(loose, second);
        }
        return Optional.of(loose);
    }

    private static void add(Set<Rect> loose, Rect piece) {
        if (piece.length() > 0 && piece.width() > 0) {
            loose.add(piece);
        }
    }

    /** Whether the halves of every cut are what the saw leaves. */
    static boolean matches(CutTree from, long kerf) {
        CutTree node = from;
        while (node instanceof CutTree.Cut cut) {
            boolean across = cut.direction() == CutTree.Direction.ACROSS;
            Rect a = cut.first().area();
            Rect b = cut.second().area();
            Rect all = cut.area();
            long leftEnd = across ? a.right() : a.top();
            long rightStart = across ? b.x() : b.y();
            boolean noFirst = across ? a.length() == 0 : a.width() == 0;
            boolean noSecond = across ? b.length() == 0 : b.width() == 0;
            boolean sizes = all.holds(a)
                    && all.holds(b)
                    && (across ? a.width() : a.length()) == (across ? all.width() : all.length())
                    && (across ? b.width() : b.length()) == (across ? all.width() : all.length());
            boolean gap = rightStart - leftEnd <= kerf
                    && (rightStart - cut.position() == kerf || noSecond)
                    && (leftEnd == cut.position() || noFirst);
            if (!sizes || !gap || !matches(cut.first(), kerf)) {
                return false;
            }
            node = cut.second();
        }
        return true;
    }
}

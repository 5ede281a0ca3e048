package dev.treen.yield;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Parts that are alike change places in a layout at no cost: each gets its old place, or one on its old board. */
final class Alike {
    /** A place, whatever the size of what lies there. */
    record Place(String stockId, long x, long y) {
        static Place of(String stockId, Rect area) {
            return new Place(stockId, area.x(), area.y());
        }
    }

    private record Kind(Piece as, List<Set<String>> sets) {}

    private Alike() {
    }

    /**
     * {@code layout} with parts that are alike in their old places where it can be.
     *
     * @param before the old places
     * @param sets parts that are only like others of the same sets
     */
    static Layout back(YieldProblem problem, Layout layout, Map<String, Place> before, List<Set<String>> sets) {
        Map<String, Place> now = new HashMap<>();
        layout.boards().forEach(board -> board.placements().forEach(
                part -> now.put(part.pieceId(), Place.of(board.stockId(), part.area()))));
        Set<String> inRuns = new HashSet<>();
        problem.runs().forEach(run -> inRuns.addAll(run.pieceIds()));
        Map<Kind, List<String>> alike = new LinkedHashMap<>();
        for (Piece piece : problem.pieces()) {
            if (now.containsKey(piece.id()) && !inRuns.contains(piece.id())) {
                List<Set<String>> own = sets.stream().filter(set -> set.contains(piece.id())).toList();
                alike.computeIfAbsent(new Kind(nameless(piece), own), kind -> new ArrayList<>()).add(piece.id());
            }
        }
        Map<Place, String> lies = new HashMap<>();
        alike.values().forEach(group -> lies.putAll(dealt(group, now, before)));
        List<BoardLayout> boards = layout.boards().stream()
                .map(board -> new BoardLayout(board.stockId(), board.index(), named(board.tree(), board, lies)))
                .toList();
        return new Layout(boards, layout.unplaced(), layout.objective(), layout.score(), layout.bound(),
                layout.proved(), layout.steps());
    }

    private static Piece nameless(Piece piece) {
        return new Piece("", piece.length(), piece.width(), piece.copies(), piece.mayTurn(), piece.klasses(),
                piece.onlyFrom(), piece.value(), piece.ways());
    }

    private static Map<Place, String> dealt(List<String> group, Map<String, Place> now, Map<String, Place> before) {
        List<Place> open = new ArrayList<>();
        group.forEach(id -> Optional.ofNullable(now.get(id)).ifPresent(open::add));
        List<String> left = new ArrayList<>(group);
        Map<Place, String> dealt = new HashMap<>();
        left.removeIf(id -> {
            Place old = before.get(id);
            boolean there = old != null && open.remove(old);
            if (there) {
                dealt.put(old, id);
            }
            return there;
        });
        left.removeIf(id -> {
            Place old = before.get(id);
            Optional<Place> near = old == null ? Optional.empty()
                    : open.stream().filter(place -> place.stockId().equals(old.stockId())).findFirst();
            near.ifPresent(place -> {
                open.remove(place);
                dealt.put(place, id);
            });
            return near.isPresent();
        });
        for (int i = 0; i < left.size(); i++) {
            dealt.put(open.get(i), left.get(i));
        }
        return dealt;
    }

    private static CutTree named(CutTree from, BoardLayout board, Map<Place, String> lies) {
        return Rebuilt.of(from, leaf -> leaf instanceof CutTree.PieceLeaf part
                ? new CutTree.PieceLeaf(
                        part.area(),
                        lies.getOrDefault(Place.of(board.stockId(), part.area()), part.pieceId()),
                        part.copy(),
                        part.turned())
                : leaf, Rebuilt.Join.SAME);
    }
}

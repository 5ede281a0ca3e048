package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Into how many leaves boards may be resawn, those that are decided together in one list of options. */
record BoardChoices(Joined joined, EarlierLayout earlier, Set<String> made) {
    /** Beyond so many boards those of one thickness are resawn alike. */
    private static final int MOST_BOARDS = 8;

    List<List<Map<String, Integer>>> all() {
        Map<String, Set<Length>> wanted = new HashMap<>();
        for (FinishedPart part : joined.made()) {
            List<Board> sources = part.part().sources();
            List<String> names = sources.isEmpty() ? List.of("") : sources.stream().map(Board::name).toList();
            names.forEach(from -> wanted.computeIfAbsent(from, name -> new HashSet<>()).add(Staving.thickness(part)));
        }
        List<List<Map<String, Integer>>> all = new ArrayList<>();
        Map<Object, List<String>> groups = new LinkedHashMap<>();
        Map<Object, List<Integer>> counts = new HashMap<>();
        boolean many = joined.project().boards().size() > MOST_BOARDS;
        for (Board board : joined.project().boards()) {
            Set<Length> thick = new HashSet<>(wanted.getOrDefault("", Set.of()));
            thick.addAll(wanted.getOrDefault(board.name(), Set.of()));
            for (Ripped ripped : Ripped.of(board)) {
                List<Integer> possible = kept(ripped, Leaves.counts(ripped, thick, joined));
                Object group = many ? List.of(board.thickness().value(), possible) : ripped.piece().name();
                groups.computeIfAbsent(group, each -> new ArrayList<>()).add(ripped.piece().name());
                counts.put(group, possible);
            }
        }
        groups.forEach((group, names) -> all.add(counts.getOrDefault(group, List.of(1)).stream()
                .map(count -> alike(names, count))
                .toList()));
        return all;
    }

    private static Map<String, Integer> alike(List<String> names, int count) {
        Map<String, Integer> leaves = new HashMap<>();
        names.forEach(name -> leaves.put(name, count));
        return leaves;
    }

    /** As it was resawn in an earlier plan: first, or alone where a part of it is made. */
    private List<Integer> kept(Ripped ripped, List<Integer> possible) {
        Optional<EarlierLayout.Board> was = earlier.boards().stream()
                .filter(board -> board.name().equals(ripped.piece().name()))
                .findFirst();
        if (was.isEmpty() || was.get().leaves() < 1 || was.get().leaves() > Leaves.MOST) {
            return possible;
        }
        int leaves = was.get().leaves();
        boolean cut = earlier.boards().stream()
                .filter(board -> board.name().equals(ripped.piece().name()))
                .flatMap(board -> board.parts().keySet().stream())
                .anyMatch(name -> Blank.partsOf(name).stream().anyMatch(made::contains));
        if (cut) {
            return List.of(leaves);
        }
        List<Integer> sorted = new ArrayList<>(possible);
        if (sorted.remove(Integer.valueOf(leaves))) {
            sorted.addFirst(leaves);
        }
        return sorted;
    }
}

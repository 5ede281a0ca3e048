package dev.treen.cutting;

import dev.treen.finding.Finding;
import dev.treen.model.Board;
import dev.treen.model.Part;
import java.util.List;
import java.util.Optional;

/**
 * Every part on a board.
 *
 * @param boards the boards and leaves that are cut, in the order of the project
 * @param untouched leaves of those boards that stay whole, by name
 * @param unplaced parts for which there is no room
 * @param areas where the wood goes
 * @param glued the parts that are glued up from staves, and how they are divided
 * @param gap how far the layout may be from the best possible, as a share
 * @param proved whether nothing better is possible
 * @param bound how the best possible was bounded
 * @param moves what became of the layout of an earlier plan
 * @param remarks what a maker may want to know of the boards, in sentences
 * @param findings what there is to say
 */
public record Cutting(
        List<BoardCut> boards,
        List<String> untouched,
        List<String> unplaced,
        Areas areas,
        List<Glued> glued,
        double gap,
        boolean proved,
        String bound,
        Moves moves,
        List<String> remarks,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public Cutting {
        boards = List.copyOf(boards);
        untouched = List.copyOf(untouched);
        unplaced = List.copyOf(unplaced);
        glued = List.copyOf(glued);
        remarks = List.copyOf(remarks);
        findings = List.copyOf(findings);
    }

    /** How good a layout is of which it is known how far from the best it may be at the most, as a share. */
    public static String within(double gap) {
        return "within " + (int) Math.ceil(100 * gap) + " % of the best possible";
    }

    /** How a part is divided into staves, where it is. */
    public Optional<Glued> glued(String part) {
        return glued.stream().filter(each -> each.part().equals(part)).findFirst();
    }

    /** The board, or the leaf of one, that {@code member} is sawn from; empty where it found no room. */
    public Optional<BoardCut> boardOf(Blank.Member member) {
        return boards.stream()
                .filter(cut -> cut.parts().stream().anyMatch(piece -> piece.blank().members().contains(member)))
                .findFirst();
    }

    /**
     * The boards, as they lie on the rack, that a part comes from: where any of a species will do, those that the layout took,
     * none where it found no room; else the one that it names.
     */
    public List<Board> sourcesOf(Part part) {
        return part.anyOf().isEmpty()
                ? part.from().stream().toList()
                : boards.stream()
                        .filter(cut -> cut.parts().stream()
                                .anyMatch(piece -> piece.blank().parts().contains(part.name())))
                        .map(BoardCut::source)
                        .distinct()
                        .toList();
    }

    /** No layout, and why. */
    static Cutting none(List<String> unplaced, List<Finding> findings) {
        return new Cutting(List.of(), List.of(), unplaced, Areas.NONE, List.of(), 0, false, "", Moves.NONE, List.of(),
                findings);
    }
}

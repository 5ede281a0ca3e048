package dev.treen.plan;

import dev.treen.joinery.Joined;
import dev.treen.joinery.LoosePiece;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The small pieces of all joints, those that are alike in one row. */
final class LooseRows {
    private record Alike(LoosePiece piece, String board, String species) {}

    private record Found(int count, Set<String> parts) {}

    private LooseRows() {
    }

    /** The rows of {@code joined}, marked on from {@code marked}. */
    static List<CutList.Loose> of(Joined joined, int marked) {
        Map<Alike, Found> alike = new LinkedHashMap<>();
        for (MadeJoint made : joined.joints()) {
            for (LoosePiece piece : made.pieces()) {
                Optional<Board> board = piece.kind().bought() ? Optional.empty() : board(made);
                Alike key = new Alike(
                        new LoosePiece(piece.kind(), piece.size(), 0),
                        board.map(Board::name).orElse(""),
                        board.map(Woods::name).orElse(""));
                Found found = alike.getOrDefault(key, new Found(0, Set.of()));
                Set<String> parts = new LinkedHashSet<>(found.parts());
                parts.add(made.joint().left().name());
                parts.add(made.joint().right().name());
                alike.put(key, new Found(found.count() + piece.count(), parts));
            }
        }
        List<CutList.Loose> rows = new ArrayList<>();
        alike.forEach((key, found) -> rows.add(new CutList.Loose(
                CutList.mark(marked + rows.size()),
                new LoosePiece(key.piece().kind(), key.piece().size(), found.count()),
                key.species(),
                key.board(),
                List.copyOf(found.parts()))));
        return rows;
    }

    /** A piece is made of what one of its parts is made of: solid wood, where one of them is. */
    private static Optional<Board> board(MadeJoint made) {
        return Stream.of(made.joint().left(), made.joint().right())
                .map(Part::from)
                .flatMap(Optional::stream)
                .filter(board -> !board.sheet())
                .findFirst();
    }
}

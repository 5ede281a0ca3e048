package dev.treen.plan;

import dev.treen.cutting.Cutting;
import dev.treen.joinery.Joined;
import dev.treen.joinery.LoosePiece;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
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

    /** The rows of {@code joined} as it is laid out in {@code cutting}, marked on from {@code marked}. */
    static List<CutList.Loose> of(Joined joined, Cutting cutting, int marked) {
        Map<Alike, Found> alike = new LinkedHashMap<>();
        for (MadeJoint made : joined.joints()) {
            for (LoosePiece piece : made.pieces()) {
                Optional<Board> board = piece.kind().bought() ? Optional.empty() : board(made, cutting);
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
    private static Optional<Board> board(MadeJoint made, Cutting cutting) {
        return Stream.of(made.joint().left(), made.joint().right())
                .flatMap(part -> cutting.sourcesOf(part).stream())
                .filter(board -> !board.sheet())
                .findFirst();
    }
}

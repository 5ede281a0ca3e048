package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.GlueUp;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How parts that are glued up may be divided; parts that are alike are divided alike. */
final class StaveChoices {
    private final Joined joined;
    private final EarlierLayout earlier;
    private final Set<String> made;
    private final Map<String, Rectangle> before = new HashMap<>();

    StaveChoices(Joined joined, EarlierLayout earlier, Set<String> made) {
        this.joined = joined;
        this.earlier = earlier;
        this.made = made;
        earlier.spots().forEach((name, spot) -> before.put(name, spot.area()));
    }

    /** What decides how a part is divided. */
    private record Like(
            Length length, Length width, Length thickness, String from, List<Rectangle> touched,
            Optional<Integer> staves, Optional<Length> widest, GlueUp.Match match, boolean made) {}

    /** The options of each group of parts that are alike. */
    List<List<Map<String, Glued>>> all() {
        JointPlaces places = new JointPlaces(joined);
        Map<Like, List<Staving>> groups = new LinkedHashMap<>();
        for (FinishedPart part : joined.made()) {
            part.part().glueUp().ifPresent(asked -> {
                List<Rectangle> touched = places.of(part);
                groups.computeIfAbsent(like(part, asked, touched), l -> new ArrayList<>())
                        .add(new Staving(part, asked, touched, boards(part), NoRoom.step(joined)));
            });
        }
        List<List<Map<String, Glued>>> all = new ArrayList<>();
        groups.forEach((like, stavings) -> all.add(options(stavings, like.made())));
        return all;
    }

    private Like like(FinishedPart part, GlueUp asked, List<Rectangle> touched) {
        return new Like(
                part.roughLength().value(), part.roughWidth().value(), part.thickness().value(),
                part.part().source(), touched, asked.staves(), asked.widest().map(w -> w.value()),
                asked.match(), made.contains(part.part().name()));
    }

    private List<Board> boards(FinishedPart part) {
        List<Board> all = joined.project().boards().stream()
                .filter(board -> !board.sheet() && Leaves.mayComeFrom(part, board))
                .flatMap(board -> Ripped.of(board).stream())
                .map(Ripped::piece)
                .toList();
        List<Board> thick = all.stream()
                .filter(board -> Leaves.leaf(board, 1).compareTo(Staving.thickness(part)) >= 0)
                .toList();
        return thick.isEmpty() ? all : thick;
    }

    private List<Map<String, Glued>> options(List<Staving> alike, boolean made) {
        List<List<Glued>> ways = alike.stream().map(Staving::ways).toList();
        List<Map<String, Glued>> options = new ArrayList<>();
        for (int i = 0; i < ways.getFirst().size(); i++) {
            Map<String, Glued> option = new HashMap<>();
            for (List<Glued> way : ways) {
                option.put(way.get(i).part(), way.get(i));
            }
            options.add(option);
        }
        Optional<Map<String, Glued>> kept = kept(alike);
        if (kept.isPresent() && made) {
            return List.of(kept.get());
        }
        kept.ifPresent(first -> {
            options.remove(first);
            options.addFirst(first);
        });
        return options;
    }

    /** As an earlier plan divided them, where that still adds up. */
    private Optional<Map<String, Glued>> kept(List<Staving> alike) {
        if (earlier.boards().isEmpty()) {
            return Optional.empty();
        }
        Map<String, Glued> kept = new HashMap<>();
        for (Staving each : alike) {
            Glued any = each.ways().getFirst();
            List<Length> staves = new ArrayList<>();
            Rectangle was = before.get(new Blank.Member(any.part(), 1).name());
            while (was != null) {
                staves.add(was.width().minus(any.edges()));
                was = before.get(new Blank.Member(any.part(), staves.size() + 1).name());
            }
            Length sum = staves.stream().reduce(Length.ZERO, Length::plus);
            Length whole = any.staves().stream().reduce(Length.ZERO, Length::plus);
            boolean counts = any.asked().staves().map(count -> count == staves.size()).orElse(true);
            if (staves.size() < 2 || !counts || !sum.equals(whole) || !each.clear(staves)) {
                return Optional.empty();
            }
            kept.put(any.part(), each.glued(staves, true));
        }
        return Optional.of(kept);
    }
}

package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Saws every board of a layout as its numbered cuts say, with nothing but a list of pieces in hand, and looks at what has
 * come of it: an independent reading of the same numbers.
 */
class SawingTest {

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf"})
    void theExamplesCanBeSawnAsDrawn(String name) {
        sawn(Projects.example(name));
    }

    @Test
    void manyRandomProjectsCanBeSawnAsDrawn() {
        Random random = new Random(20_261_125);
        int strips = 0;
        for (int i = 0; i < 60; i++) {
            Compilation compilation = Projects.of(
                    "kerf " + random.nextInt(4) + "; shooting 0.5; planing 0.5; resaw 1; end_waste "
                            + random.nextInt(20),
                    project(random));
            strips += sawn(compilation);
        }
        assertThat(strips).as("strips seen").isGreaterThan(20);
    }

    /** Every change between crosscut and rip asks for another saw or fence. */
    @Test
    void theSawIsChangedAsSeldomAsCanBe() {
        Random random = new Random(11);
        int boards = 0;
        for (int i = 0; i < 40; i++) {
            for (BoardCut board : Projects.of("kerf 2; end_waste 10", project(random)).cutting().boards()) {
                List<BoardCut.SawCut> free = board.cuts().stream()
                        .filter(cut -> cut.strip() == BoardCut.SawCut.NO_STRIP)
                        .toList();
                if (free.size() > 1 && free.size() <= 9) {
                    boards++;
                    assertThat(changes(free)).isEqualTo(fewest(free, new ArrayList<>()));
                }
            }
        }
        assertThat(boards).isGreaterThan(15);
    }

    private static int changes(List<BoardCut.SawCut> cuts) {
        int changes = 0;
        for (int i = 1; i < cuts.size(); i++) {
            changes += cuts.get(i).along() == cuts.get(i - 1).along() ? 0 : 1;
        }
        return changes;
    }

    /** Over all orders in which a cut comes after those that go through a larger piece round its own. */
    private static int fewest(List<BoardCut.SawCut> left, List<BoardCut.SawCut> done) {
        if (left.isEmpty()) {
            return changes(done);
        }
        int fewest = Integer.MAX_VALUE;
        for (BoardCut.SawCut next : left) {
            boolean free = left.stream().allMatch(other -> other.equals(next) || !holds(other.piece(), next.piece()));
            if (free) {
                List<BoardCut.SawCut> rest = new ArrayList<>(left);
                rest.remove(next);
                done.addLast(next);
                fewest = Math.min(fewest, fewest(rest, done));
                done.removeLast();
            }
        }
        return fewest;
    }

    private static boolean holds(Rectangle outer, Rectangle inner) {
        return outer.x().compareTo(inner.x()) <= 0
                && outer.y().compareTo(inner.y()) <= 0
                && outer.x().plus(outer.length()).compareTo(inner.x().plus(inner.length())) >= 0
                && outer.y().plus(outer.width()).compareTo(inner.y().plus(inner.width())) >= 0;
    }

    private static String project(Random random) {
        StringBuilder text = new StringBuilder();
        for (int board = 0; board < 1 + random.nextInt(3); board++) {
            text.append("board b").append(board).append(" { species black_cherry; size ")
                    .append(300 + random.nextInt(1500)).append(" x ").append(80 + random.nextInt(200)).append(" x ")
                    .append(12 + random.nextInt(30)).append("; rings flat; moisture 9%");
            for (int knot = 0; knot < random.nextInt(3); knot++) {
                text.append("; knot { at ").append(random.nextInt(1000)).append(", ").append(random.nextInt(100))
                        .append("; radius ").append(3 + random.nextInt(15)).append(" }");
            }
            text.append(" }\n");
        }
        for (int part = 0; part < 1 + random.nextInt(14); part++) {
            // Few widths, so that there are strips to find.
            text.append("part p").append(part).append(" { length ").append(50 + random.nextInt(250)).append("; width ")
                    .append(30 + 20 * random.nextInt(3)).append("; thickness ").append(6 + random.nextInt(6))
                    .append(" }\n");
        }
        return text.toString();
    }

    /** Saws all boards of a layout; the number of strips. */
    private static int sawn(Compilation compilation) {
        int strips = 0;
        for (BoardCut board : compilation.cutting().boards()) {
            saw(board);
            strips += board.strips().size();
        }
        Set<String> placed = new HashSet<>();
        compilation.cutting().boards().forEach(b -> b.parts().forEach(p -> assertThat(placed.add(p.name())).isTrue()));
        placed.addAll(compilation.cutting().unplaced());
        assertThat(placed).hasSize(compilation.joined().parts().size());
        return strips;
    }

    private static void saw(BoardCut board) {
        List<Rectangle> pieces = new ArrayList<>();
        pieces.add(new Rectangle(
                Length.ZERO, Length.ZERO, board.board().length().value(), board.board().width().value()));
        boolean apart = false;
        int number = 0;
        for (BoardCut.SawCut cut : board.cuts()) {
            assertThat(cut.number()).isEqualTo(++number);
            boolean strip = cut.strip() != BoardCut.SawCut.NO_STRIP;
            if (strip && !apart) {
                // Before the first strip is cut apart all strips are there, whole.
                board.strips().forEach(each -> assertThat(pieces).contains(each.area()));
            }
            assertThat(strip || !apart).as("strips are cut apart last").isTrue();
            apart |= strip;
            assertThat(pieces.remove(cut.piece())).as("the piece that cut %s goes through", number).isTrue();
            split(cut, pieces);
        }
        board.parts().forEach(part -> assertThat(pieces).contains(part.area()));
        board.offcuts().forEach(offcut -> assertThat(pieces).contains(offcut));
    }

    private static void split(BoardCut.SawCut cut, List<Rectangle> pieces) {
        Rectangle whole = cut.piece();
        Length begin = cut.along() ? whole.y() : whole.x();
        Length size = cut.along() ? whole.width() : whole.length();
        Length first = cut.at().minus(begin);
        Length behind = cut.at().plus(cut.kerf());
        Length second = begin.plus(size).minus(behind);
        assertThat(first.signum()).isNotNegative();
        piece(whole, begin, first, cut.along()).ifPresent(pieces::add);
        piece(whole, behind, second, cut.along()).ifPresent(pieces::add);
    }

    private static Optional<Rectangle> piece(Rectangle whole, Length begin, Length size, boolean along) {
        if (size.signum() <= 0) {
            return Optional.empty();
        }
        return Optional.of(along
                ? new Rectangle(whole.x(), begin, whole.length(), size)
                : new Rectangle(begin, whole.y(), size, whole.width()));
    }

    @Test
    void neighboursOfOneWidthHangTogether() {
        Compilation compilation = Projects.of(
                "kerf 1; shooting 0; planing 0; resaw 0; end_waste 0",
                """
                board b { species black_cherry; size 602 x 120 x 9; rings flat; moisture 9% }
                repeat i in 1..3 { part p[i] { length 200; width 80; thickness 9 } }
                """);
        BoardCut board = compilation.cutting().boards().getFirst();
        assertThat(board.strips()).hasSize(1);
        assertThat(board.strips().getFirst().parts()).hasSize(3);
        // One rip frees the strip, two crosscuts part it; the rest is one long offcut-to-be, not three.
        assertThat(board.cuts()).extracting(BoardCut.SawCut::along).containsExactly(true, false, false);
    }

    /** Rules of the trade Y-13: a long board is crosscut before it is ripped. */
    @Test
    void aLongRowIsCrosscutFirst() {
        Compilation compilation = Projects.of(
                "kerf 1; shooting 0; planing 0; resaw 0; end_waste 0",
                """
                board b { species black_cherry; size 2102 x 120 x 9; rings flat; moisture 9% }
                repeat i in 1..3 { part p[i] { length 700; width 80; thickness 9 } }
                """);
        BoardCut board = compilation.cutting().boards().getFirst();
        assertThat(board.strips()).isEmpty();
        assertThat(board.cuts().getFirst().along()).isFalse();
    }
}

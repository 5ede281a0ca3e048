package dev.treen.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingsTest {
    /** Half of this is the room that rounding may take. */
    private static final double TOUCH = 0.1;

    private static Map<String, Sheet> drawn(String example) {
        return Drawings.of(Projects.example(example).joined());
    }

    private static <T extends Mark> List<T> all(Sheet sheet, Class<T> kind) {
        return sheet.marks().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"tea-caddy", "wall-shelf", "garden-table", "hall-bookcase", "larder-door", "kitchen-drawer"})
    void wordsLieOnNoLineAndOnNoOtherWords(String example) {
        drawn(example).forEach((name, sheet) -> {
            List<Mark.Label> labels = all(sheet, Mark.Label.class);
            for (int i = 0; i < labels.size(); i++) {
                Bounds box = labels.get(i).bounds().grown(-TOUCH / 2);
                String words = name + ": " + labels.get(i).words();
                for (Mark.Line line : all(sheet, Mark.Line.class)) {
                    assertThat(box.crossedBy(line.from(), line.to())).as(words + " and " + line).isFalse();
                }
                for (int j = i + 1; j < labels.size(); j++) {
                    assertThat(box.overlaps(labels.get(j).bounds())).as(words + labels.get(j).words()).isFalse();
                }
            }
        });
    }

    /** The inner edge of a mitre follows from the length and 45°, however many grooves run into it. */
    @ParameterizedTest
    @ValueSource(strings = {"front", "left", "right"})
    void whatFollowsFromAMitreIsNotToldOnceMore(String name) {
        PartViews views = PartViews.of(Laid.of(Projects.example("tea-caddy").joined().part(name).orElseThrow()));
        assertThat(views.levels().values().stream().flatMap(List::stream)
                .filter(level -> level.along() == Measured.LENGTH)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf", "garden-table", "hall-bookcase", "larder-door"})
    void everythingLiesOnThePaper(String example) {
        drawn(example).forEach((name, sheet) -> assertThat(new Bounds(9, 9, sheet.width() - 9, sheet.height() - 9)
                .contains(Mark.bounds(sheet.marks()))).as(name).isTrue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf", "garden-table", "hall-bookcase"})
    void everyFigureStandsOnceAndTheSizesOverAllAreAmongThem(String example) {
        Compilation compilation = Projects.example(example);
        compilation.joined().parts().forEach(part -> {
            PartViews views = PartViews.of(Laid.of(part));
            List<Level> told = new ArrayList<>();
            views.levels().values().forEach(told::addAll);
            Set<Level> once = new HashSet<>(told);
            assertThat(told).hasSameSizeAs(once);
            assertThat(once).contains(
                    new Level(Measured.LENGTH, part.length().value()),
                    new Level(Measured.WIDTH, part.width().value()),
                    new Level(Measured.THICKNESS, part.thickness().value()));
        });
    }

    /** The caddy's front: a base groove 5 up, 5 wide and 4 deep, as the project says, its ends mitred. */
    @Test
    void aMitredAndGroovedSideCanBeMarkedOut() {
        Sheet front = drawn("tea-caddy").get("part-front");
        assertThat(front).isNotNull();
        assertThat(front.description())
                .contains("Across from the face edge: 5 mm, 10 mm, 84 mm, 89 mm, 94 mm.")
                .contains("In thickness from the face side: 4 mm, 9 mm.")
                .contains("Slope 45°.");
        assertThat(all(front, Mark.Label.class)).extracting(Mark.Label::words)
                .contains("2× 45°", "grain", "face edge", "face side", "1:1", "front, back");
    }

    @Test
    void aScaleOfOneToOnePrintsTrue() {
        Sheet front = drawn("tea-caddy").get("part-front");
        assertThat(front).isNotNull();
        assertThat(front.svg()).contains("width=\"297mm\" height=\"210mm\" viewBox=\"0 0 297 210\"");
        double longest = all(front, Mark.Line.class).stream()
                .filter(line -> line.pen() == Pen.SEEN && line.from().y() < 180)
                .mapToDouble(line -> line.from().to(line.to()))
                .max()
                .orElse(0);
        assertThat(longest).isEqualTo(178, org.assertj.core.api.Assertions.within(1e-6));
    }

    /** The table's leg, 716 long with mortises of 6: at 1:5 they were a millimetre wide. */
    @Test
    void aLongPartIsShortenedWhereNothingIsMarkedOutOnIt() {
        Sheet leg = drawn("garden-table").get("part-garden.leg[1]");
        assertThat(leg).isNotNull();
        assertThat(leg.scale()).isEqualTo("1:1, shortened");
        assertThat(leg.description()).contains("30 mm, 55.5 mm, 61.5 mm, 87 mm, 716 mm", "left out");
        assertThat(all(leg, Mark.Label.class)).extracting(Mark.Label::words)
                .contains("30", "55.5", "61.5", "87", "716", "29", "35", "48");
        List<Mark.Line> seen = all(leg, Mark.Line.class).stream().filter(line -> line.pen() == Pen.SEEN).toList();
        assertThat(seen).anyMatch(line -> Math.abs(line.from().to(line.to()) - (87 - 61.5)) < 1e-9);
        assertThat(seen).allMatch(line -> line.from().to(line.to()) < leg.width());
    }

    /** The table's leg has two pairs of mortises at the same height, one pair in its face edge: both are seen from outside. */
    @Test
    void everyMortiseIsSeenFromWhereItIsChopped() {
        PartViews leg = PartViews
                .of(Laid.of(Projects.example("garden-table").joined().part("garden.leg[1]").orElseThrow()));
        assertThat(leg.views()).extracting(PartView::way).contains(Way.FRONT, Way.BELOW);
        for (String example : List.of("garden-table", "garden-bench", "larder-door", "spice-cabinet", "sewing-box")) {
            Projects.example(example).joined().parts().forEach(part -> {
                PartViews views = PartViews.of(Laid.of(part));
                Set<Way> shown = views.views().stream().map(PartView::way).collect(Collectors.toSet());
                Mouths mouths = Mouths.of(Laid.of(part));
                assertThat(Way.values()).as(example + " " + part.part().name())
                        .noneMatch(way -> mouths.wants(way, shown));
            });
        }
    }

    /** A stile's mortises lie in its groove, as wide as they are, and a rail has none: no view more than their cuts need. */
    @Test
    void whatIsNotOpenThereIsNotDrawn() {
        for (String name : List.of("door.stile_left", "door.rail_top", "door.panel")) {
            Laid part = Laid.of(Projects.example("larder-door").joined().part(name).orElseThrow());
            Mouths mouths = Mouths.of(part);
            assertThat(Way.values()).as(name).noneMatch(way -> mouths.wants(way, Set.of(Way.FRONT)));
        }
    }

    @Test
    void glassHasNoGrain() {
        Sheet pane = drawn("print-frame").get("part-print.pane");
        assertThat(pane).isNotNull();
        assertThat(all(pane, Mark.Label.class)).extracting(Mark.Label::words).contains("300", "200")
                .doesNotContain("grain");
    }

    /** 30 mm is 1.181 in, a shade under 1 3/16; 716 mm is 28.19 in, which 28 3/16 is to the nearest 1/32. */
    @Test
    void bothUnitsStandSideBySide() {
        Compilation table = Projects.example("garden-table");
        Figures both = new Figures(table.plan().format(), LengthFormat.named("in"));
        Sheet leg = Drawings.all(table.joined(), both).sheets().get("part-garden.leg[1]");
        assertThat(leg).isNotNull();
        assertThat(all(leg, Mark.Label.class)).extracting(Mark.Label::words).contains("30 [1 3/16-]", "716 [28 3/16]");
        assertThat(leg.description()).contains("30 mm [1 3/16- in]");
        List<Mark.Label> labels = all(leg, Mark.Label.class);
        for (int i = 0; i < labels.size(); i++) {
            Bounds one = labels.get(i).bounds().grown(-TOUCH / 2);
            assertThat(labels.subList(i + 1, labels.size())).as(labels.get(i).words())
                    .noneMatch(other -> one.overlaps(other.bounds()));
        }
    }

    /** What slants or lies at one place is never left out, whatever is kept beside it. */
    @Test
    void whatIsLeftOutRunsStraightThrough() {
        Projects.example("hall-bookcase").joined().parts().forEach(part -> {
            PartViews views = PartViews.of(Laid.of(part));
            Breaks breaks = Breaks.of(views.views(), 1, 14);
            views.levels().values().stream().flatMap(List::stream)
                    .filter(level -> level.along() == Measured.LENGTH)
                    .forEach(level -> assertThat(breaks.left())
                            .noneMatch(each -> each.from() - 13.9 < level.at().toDoubleMm()
                                    && level.at().toDoubleMm() < each.to() + 13.9));
            double whole = part.length().value().toDoubleMm();
            double left = breaks.left().stream().mapToDouble(each -> each.to() - each.from() - Breaks.GAP).sum();
            assertThat(breaks.at(whole)).isEqualTo(whole - left, org.assertj.core.api.Assertions.within(1e-9));
        });
    }

    @Test
    void drawsTheSameBytesAgain() {
        drawn("wall-shelf").forEach((name, sheet) -> assertThat(drawn("wall-shelf").get(name)).isEqualTo(sheet));
    }

    @Test
    void placesAreMovedApartAsLittleAsCanBe() {
        assertThat(Spread.apart(List.of(0.0, 1.0, 20.0), 4, Double.NEGATIVE_INFINITY))
                .containsExactly(-1.5, 2.5, 20.0);
        assertThat(Spread.apart(List.of(0.0, 1.0), 4, 0)).containsExactly(0.0, 4.0);
    }
}

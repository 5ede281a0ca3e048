package dev.treen.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.drawing.PaperSize;
import dev.treen.joinery.Joined;
import dev.treen.page.TemplatePages;
import dev.treen.plan.Projects;
import java.util.List;
import org.junit.jupiter.api.Test;

class TemplatesTest {
    private static final String HEAD = "project \"Blanket chest\" { units mm; climate { humidity 35%..65%; temperature"
            + " 18degC..24degC } }\nboard plank { species white_ash; size 2400 x 600 x 20; rings quarter; moisture 9% }\n";

    /** A corner of an invented chest, {@code high} mm high. */
    private static Joined corner(int high, String joint) {
        return Projects.compile(HEAD + "part side { length 400; width " + high + "; thickness 16; from plank;"
                + " place { length back; width up; at -16, 0, 0 } }\n"
                + "part front { length 600; width " + high + "; thickness 18; from plank;"
                + " place { length right; width up; at 0, -18, 0 } }\n" + joint).joined();
    }

    private static List<Mark.Line> lines(List<Mark> marks) {
        return marks.stream().filter(Mark.Line.class::isInstance).map(Mark.Line.class::cast).toList();
    }

    private static double length(Mark.Line line) {
        return line.from().to(line.to());
    }

    /** Slope 1:8 over tails as long as the front is thick, 18 mm: each side leans by 18/8 = 2.25 mm. */
    @Test
    void tailsAndPinsAreTrueToSize() {
        Joined joined = corner(120, "joint dovetail side to front { tails 4; slope 1:8; pin 6; half_pin 8 }");
        List<Template> templates = Template.of(joined);
        assertThat(templates).anyMatch(t -> t.caption().startsWith("side from the left"))
                .anyMatch(t -> t.caption().startsWith("front from the left"))
                .anyMatch(t -> t.caption().contains("front from the front"))
                .anyMatch(t -> t.caption().contains("front from the back"));
        Template tails = templates.stream().filter(t -> t.caption().startsWith("side from the left")).findFirst()
                .orElseThrow();
        List<Mark.Line> slopes = lines(tails.marks()).stream()
                .filter(l -> l.from().x() != l.to().x() && l.from().y() != l.to().y()).toList();
        assertThat(slopes).hasSize(8).allSatisfy(line -> {
            assertThat(Math.abs(line.to().x() - line.from().x())).isCloseTo(18, within(1e-6));
            assertThat(Math.abs(line.to().y() - line.from().y())).isCloseTo(2.25, within(1e-6));
        });
        // The pins are thinnest outside: (120 - 16 - 18) / 4 = 21.5 wide tails leave 6 mm between them.
        Template pins = templates.stream().filter(t -> t.caption().startsWith("front from the left")).findFirst()
                .orElseThrow();
        assertThat(lines(pins.marks())).flatExtracting(l -> List.of(l.from(), l.to()))
                .contains(new Spot(18, 8 + 21.5), new Spot(18, 8 + 21.5 + 6));
    }

    @Test
    void everySheetHasItsRulersAndKeepsToThePaper() {
        for (Sheet sheet : Templates.of(corner(120, "joint dovetail side to front"))) {
            assertThat(lines(sheet.frame())).anyMatch(l -> Math.abs(length(l) - 100) < 1e-9)
                    .anyMatch(l -> Math.abs(length(l) - 101.6) < 1e-9);
            assertThat(new Bounds(0, 0, Templates.WIDTH, Templates.HEIGHT).contains(Mark.bounds(sheet.marks())))
                    .isTrue();
            assertThat(sheet.svg()).contains("width=\"186mm\" height=\"250mm\" viewBox=\"0 0 186 250\"");
        }
    }

    /** A chest higher than a sheet: tiles share crosses, so that they can be laid on each other. */
    @Test
    void whatIsTooLongIsLaidOnSeveralSheetsWithCrosses() {
        Joined joined = corner(560, "joint dovetail side to front");
        List<Sheet> sheets = Templates.of(joined);
        assertThat(sheets).hasSizeGreaterThan(2);
        List<Mark> all = sheets.stream().flatMap(s -> s.drawing().stream()).toList();
        assertThat(all).anyMatch(m -> m instanceof Mark.Label l && l.words().endsWith("(1 of 3)"))
                .anyMatch(m -> m instanceof Mark.Label l && l.words().endsWith("(3 of 3)"));
        long rings = all.stream().filter(Mark.Ring.class::isInstance).count();
        // Two seams in each template, two crosses a seam, each on both sheets.
        assertThat(rings).isEqualTo(8L * Template.of(joined).size());
        sheets.forEach(sheet -> assertThat(new Bounds(-0.01, -0.01, Templates.WIDTH + 0.01, Templates.HEIGHT)
                .contains(Mark.bounds(sheet.marks()))).isTrue());
    }

    @Test
    void squareWorkHasNone() {
        assertThat(Templates.of(corner(120, "joint mitre side to front"))).isNotEmpty();
        assertThat(Templates.of(Projects.example("wall-shelf").joined())).isEmpty();
        assertThat(Templates.of(Projects.example("tea-caddy").joined())).isEmpty();
    }

    @Test
    void aSlidingDovetailHasItsProfile() {
        assertThat(Template.of(Projects.joint("sliding_dovetail").joined()))
                .anyMatch(t -> t.caption().startsWith("shelf"));
    }

    @Test
    void thePageHoldsToItsPaper() {
        List<Sheet> sheets = Templates.of(corner(120, "joint dovetail side to front"));
        assertThat(TemplatePages.of("Chest <1>", sheets, PaperSize.A4)).contains("@page { size: A4 portrait;")
                .contains("Chest &lt;1&gt;").isEqualTo(TemplatePages.of("Chest <1>", sheets, PaperSize.A4));
        assertThat(TemplatePages.of("Chest", sheets, PaperSize.LETTER)).contains("@page { size: letter portrait;");
    }
}

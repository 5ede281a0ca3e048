package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.RoomYear;
import dev.treen.model.FileLoader;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** The year of a room, in words and as a drawing. The projects are invented. */
class YearTextTest {
    private static final String MONTHS = "humidity 38%, 36%, 40%, 45%, 52%, 58%, 63%, 65%, 60%, 52%, 45%, 40%;"
            + " temperature 21degC";

    private static Compilation caddy(String climate) throws Exception {
        String text = Files.readString(Path.of("..", "examples", "tea-caddy", "tea-caddy.treen"))
                .replace("humidity 35%..65%; temperature 18degC..24degC", climate);
        return Compilation.of(new SourceFile("caddy.treen", text), FileLoader.NONE);
    }

    private static RoomYear base(Compilation compilation) {
        return compilation.checked().facts().years().stream()
                .filter(year -> year.part().equals("base"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theYearIsShownMonthByMonth() throws Exception {
        RoomYear year = base(caddy(MONTHS));
        assertThat(year.points()).extracting(RoomYear.Point::when).startsWith("Jan").endsWith("Dec").hasSize(12);
        String text = YearText.of(year, LengthFormat.millimetres());
        assertThat(text.lines()).hasSizeGreaterThan(16).allMatch(line -> line.length() <= 90);
        assertThat(text).contains("  Aug  ").contains("in August, mostly by").contains("loosest")
                .contains("in February")
                .contains("with quarter rings").contains("of American beech").contains("in a heated room");
        assertThat(YearText.hint(year, LengthFormat.millimetres())).matches("0\\.\\d+ mm to \\d.* mm through the year");
    }

    /** Of beech, tangential 0.00431 (Wood Handbook Table 13-5), the base wants 40 × that × its points, and 0.5. */
    @Test
    void anotherWoodAndAnotherRoomAreReckonedLikeThisOne() throws Exception {
        Compilation caddy = caddy("humidity 35%..65%; temperature 18degC..24degC");
        RoomYear year = base(caddy);
        double half = caddy.joined().part("base").orElseThrow().width().value().toDoubleMm() / 2;
        RoomYear.Need beech = year.needs().stream().filter(n -> n.what().equals("of American beech")).findFirst().get();
        assertThat(beech.gapMm()).isCloseTo(half * 0.00431 * 3.06 + 0.5, org.assertj.core.api.Assertions.offset(0.01));
        assertThat(year.needs().getFirst().what()).isEqualTo("as it is");
        assertThat(year.needs().getFirst().gapMm()).isLessThan(beech.gapMm());
    }

    @Test
    void theDrawingIsWellFormedAndKeepsToItsPaper() throws Exception {
        Compilation caddy = caddy(MONTHS);
        List<RoomYear> years = caddy.checked().facts().years();
        String svg = YearSvg.of(caddy.plan(), years);
        var document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)));
        assertThat(document.getElementsByTagName("circle").getLength()).isEqualTo(12 * years.size());
        Files.writeString(Path.of("target", "year.svg"), svg);
    }
}

package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.drawing.Svg;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class LayoutSvgTest {

    private static Document read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> all(Document svg, String name) {
        NodeList found = svg.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static String drawn(Compilation compilation) {
        Plan plan = compilation.plan();
        return LayoutSvg.of(plan.joined(), plan.cutting().boards().getFirst());
    }

    @Test
    void showsEveryPartAndEveryCutAndSaysThemInWords() throws Exception {
        Compilation compilation = Projects.example("tea-caddy");
        Document svg = read(drawn(compilation));
        List<String> texts = all(svg, "text").stream().map(Element::getTextContent).toList();
        String words = all(svg, "desc").getFirst().getTextContent();
        var board = compilation.cutting().boards().getFirst();
        board.parts().forEach(part -> {
            assertThat(texts).contains(part.name());
            assertThat(words).contains(part.name() + ", ");
        });
        board.cuts().forEach(cut -> {
            assertThat(texts).contains(String.valueOf(cut.number()));
            assertThat(words).contains("Cut " + cut.number() + ", ");
        });
        assertThat(all(svg, "title").getFirst().getTextContent()).contains("Tea caddy");
    }

    @Test
    void everythingLiesInThePicture() throws Exception {
        for (String name : List.of("tea-caddy", "wall-shelf")) {
            Document svg = read(drawn(Projects.example(name)));
            String[] box = svg.getDocumentElement().getAttribute("viewBox").split(" ");
            for (Element each : all(svg, "rect")) {
                double x = Double.parseDouble(each.getAttribute("x"));
                double y = Double.parseDouble(each.getAttribute("y"));
                assertThat(x).isNotNegative();
                assertThat(y).isNotNegative();
                assertThat(x + Double.parseDouble(each.getAttribute("width")))
                        .isLessThanOrEqualTo(Double.parseDouble(box[2]));
                assertThat(y + Double.parseDouble(each.getAttribute("height")))
                        .isLessThanOrEqualTo(Double.parseDouble(box[3]));
            }
        }
    }

    /** A split to the very end of the board, at either end: its name stands within the picture. */
    @Test
    void theNameOfASplitAtTheEndIsNotCutOff() throws Exception {
        for (String split : List.of("from 1560, 70; to 1650, 64", "from 90, 70; to 0, 64")) {
            Document svg = read(drawn(Projects.of("", "board ash { species white_ash; size 1650 x 130 x 22; check { "
                    + split + " } }\npart end { length 240; width 110; thickness 16 }\n")));
            double wide = Double.parseDouble(svg.getDocumentElement().getAttribute("viewBox").split(" ")[2]);
            Element name = all(svg, "text").stream()
                    .filter(each -> each.getTextContent().equals("check"))
                    .findFirst()
                    .orElseThrow();
            double x = Double.parseDouble(name.getAttribute("x"));
            double word = "check".length() * LayoutLabels.SMALL * Svg.LETTER;
            boolean ends = name.getAttribute("text-anchor").equals("end");
            assertThat(ends ? x - word : x).as(split).isNotNegative();
            assertThat(ends ? x : x + word).as(split).isLessThanOrEqualTo(wide);
        }
    }

    @Test
    void textOfAProjectStaysText() throws Exception {
        String hostile = Projects.text("tea-caddy")
                .replace("\"Tea caddy\"", "\"<script>alert('tea')</script> & \u0001 \uD83C\uDF75\"");
        Document svg = read(drawn(Projects.compile(hostile)));
        assertThat(all(svg, "script")).isEmpty();
        assertThat(all(svg, "title").getFirst().getTextContent()).contains("<script>alert('tea')</script> & ");
    }

    /** No meaning by colour alone: every colour has the same share of red, green and blue, or is the tint of the board. */
    @Test
    void isLegibleInBlackAndWhite() throws Exception {
        Document svg = read(drawn(Projects.example("tea-caddy")));
        for (String name : List.of("rect", "circle", "path", "text")) {
            for (Element each : all(svg, name)) {
                String fill = each.getAttribute("fill");
                boolean grey = fill.matches("#(..)\\1\\1");
                assertThat(grey || fill.isEmpty() || fill.equals("none") || fill.equals("#f3ead8")
                        || fill.equals("url(#flaw)")).as(fill).isTrue();
            }
        }
    }
}

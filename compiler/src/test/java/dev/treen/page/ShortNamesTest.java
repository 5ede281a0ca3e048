package dev.treen.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

class ShortNamesTest {
    @Test
    void whatAllNamesBeginWithEndsAtAFullStop() {
        assertThat(ShortNames.common(List.of("garden.leg[1]", "garden.slab.top"))).contains("garden.");
        assertThat(ShortNames.common(List.of("morning.sides.front", "morning.sides.base"))).contains("morning.sides.");
        assertThat(ShortNames.common(List.of("over.rail", "over_sink.rail"))).isEmpty();
        assertThat(ShortNames.common(List.of("left", "right"))).isEmpty();
        assertThat(ShortNames.common(List.of())).isEmpty();
    }

    @Test
    void namesAreShortInWordsAndDrawingsAndWholeInTheProjectsText() {
        Document page = Jsoup.parse("<section id=cut-list><p>Sizes.</p></section><p>Glue <bdi>box.lid</bdi> to the"
                + " box. Then sandbox.lid and box.</p><svg><text>box.end</text></svg>"
                + "<pre class=source>part box.lid</pre>");
        ShortNames.in(page, List.of("box.lid", "box.end"));
        assertThat(page.select("body > p").text()).isEqualTo("Glue lid to the box. Then sandbox.lid and box.");
        assertThat(page.select("svg text").text()).isEqualTo("end");
        assertThat(page.select("pre").text()).isEqualTo("part box.lid");
        assertThat(page.select("#cut-list").text()).endsWith("each begins with box. in the project's file.");
    }
}

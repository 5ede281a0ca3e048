package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written keeps to its schema, by the judgement of a library that had no part in writing either. */
class PlanJsonTest {

    private static List<Error> breaches(String schema, String json) throws IOException {
        try (InputStream in = Objects.requireNonNull(PlanJson.class.getResourceAsStream(schema))) {
            JsonNode rules = new ObjectMapper().readTree(in);
            Schema reader = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(rules);
            return reader.validate(new ObjectMapper().readTree(json));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf"})
    void plansKeepToTheirSchema(String name) throws IOException {
        String json = PlanJson.of(Projects.example(name).plan());
        assertThat(breaches("plan-schema.json", json)).isEmpty();
        assertThat(json).doesNotContain("\r").endsWith("}\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "",
            "project \"nothing\" { units mm }",
            "project \"a \\\"quote\\\" <b>\" { units mm }\npart a { length 100; width 50; thickness 1000 }\n"
                    + "sheet s { size 100 x 100 x 6 }"})
    void oddPlansKeepToItToo(String text) throws IOException {
        assertThat(breaches("plan-schema.json", PlanJson.of(Projects.compile(text).plan()))).isEmpty();
    }

    @Test
    void whatMovedKeepsToTheSchema() throws IOException {
        String text = """
                project "Shelf" { units mm }
                board one { species white_oak; size 900 x 100 x 24 }
                part rail { length 400; width 80; thickness 19 }
                part stop { length 200; width 80; thickness 19 }
                """;
        String before = PlanJson.of(Projects.compile(text).plan());
        Compilation again = Compilation.of(
                new SourceFile("shelf.treen",
                        text.replace("one", "two") + "part peg { length 160; width 40; thickness 19 }\n"),
                FileLoader.NONE, Optional.empty(), PlanReader.layout(before));
        String json = PlanJson.of(again.plan());
        assertThat(json).contains("\"moves\"", "\"fromBoard\" : \"one\"", "\"toBoard\" : \"two\"");
        assertThat(breaches("plan-schema.json", json)).isEmpty();
    }

    @Test
    void findingsKeepToTheirSchema() throws IOException {
        String tight = Projects.text("tea-caddy").replace("gap auto", "gap 0.2");
        String json = PlanJson.of(Projects.compile(tight).findings());
        assertThat(json).contains("panel-tight");
        assertThat(breaches("findings-schema.json", json)).isEmpty();
    }

    @Test
    void theSchemaIsNotBlind() throws IOException {
        String json = PlanJson.of(Projects.example("tea-caddy").plan());
        assertThat(breaches("plan-schema.json", json.replace("\"version\" : 1", "\"version\" : 2"))).isNotEmpty();
        assertThat(breaches("plan-schema.json", json.replace("\"way\" : \"along\"", "\"way\" : \"askew\"")))
                .isNotEmpty();
        assertThat(breaches("plan-schema.json", json.replaceFirst("\"mark\"", "\"sign\""))).isNotEmpty();
    }

    @Test
    void aLengthIsAPlainNumberOfMillimetres() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(PlanJson.of(Projects.example("wall-shelf").plan()));
        // 24 in at 25.4 mm, by definition (international yard and pound agreement, 1959).
        assertThat(plan.at("/parts/0/finished/length").decimalValue()).isEqualByComparingTo("609.6");
        assertThat(PlanJson.of(Projects.example("tea-caddy").plan())).doesNotContain("E+");
    }
}

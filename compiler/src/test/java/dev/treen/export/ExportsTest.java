package dev.treen.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.treen.drawing.Outlines;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.plan.Projects;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written for other programs; {@code plan-checks} holds it against readers that had no part in it. */
class ExportsTest {
    private static JsonNode gltf(Joined joined) throws Exception {
        return new ObjectMapper().readTree(Gltf.of(joined).orElseThrow());
    }

    private static ByteBuffer bytes(JsonNode gltf) {
        String uri = gltf.at("/buffers/0/uri").asText();
        return ByteBuffer.wrap(Base64.getDecoder().decode(uri.substring(uri.indexOf(',') + 1)))
                .order(ByteOrder.LITTLE_ENDIAN);
    }

    private static double[] corner(ByteBuffer bytes, int base, int number) {
        return new double[]{bytes.getFloat(base + number * 12), bytes.getFloat(base + number * 12 + 4),
                bytes.getFloat(base + number * 12 + 8)};
    }

    /** The volume within a closed surface is the sum of the tetrahedra from any point to its triangles (Gauss). */
    private static double volume(JsonNode gltf, int mesh) {
        ByteBuffer bytes = bytes(gltf);
        JsonNode primitive = gltf.at("/meshes/" + mesh + "/primitives/0");
        JsonNode corners = gltf.get("accessors").get(primitive.at("/attributes/POSITION").asInt());
        JsonNode triangles = gltf.get("accessors").get(primitive.get("indices").asInt());
        int base = corners.get("byteOffset").asInt();
        int index = gltf.at("/bufferViews/1/byteOffset").asInt() + triangles.get("byteOffset").asInt();
        double six = 0;
        for (int i = 0; i < triangles.get("count").asInt(); i += 3) {
            double[] a = corner(bytes, base, bytes.getInt(index + 4 * i));
            double[] b = corner(bytes, base, bytes.getInt(index + 4 * i + 4));
            double[] c = corner(bytes, base, bytes.getInt(index + 4 * i + 8));
            six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2])
                    + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
        return six / 6;
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf", "garden-bench", "spice-cupboard"})
    void everyPartIsAClosedSurfaceOfItsVolume(String example) throws Exception {
        Joined joined = Projects.example(example).joined();
        JsonNode gltf = gltf(joined);
        for (int i = 0; i < gltf.get("nodes").size(); i++) {
            String name = gltf.get("nodes").get(i).get("name").asText();
            double cubicMetres = joined.part(name).flatMap(FinishedPart::solid).orElseThrow().volume().doubleValue()
                    / 1e9;
            assertThat(volume(gltf, i)).as(name).isCloseTo(cubicMetres, within(cubicMetres * 1e-4));
        }
        assertThat(gltf.get("nodes")).hasSameSizeAs(joined.parts());
    }

    /** The caddy stands on y = 0 and looks to positive z, where its front is; a fact of its project, in metres. */
    @Test
    void theAssemblyStandsUprightInMetres() throws Exception {
        JsonNode gltf = gltf(Projects.example("tea-caddy").joined());
        Map<String, JsonNode> corners = new HashMap<>();
        gltf.get("nodes").forEach(node -> corners.put(node.get("name").asText(), gltf.get("accessors").get(
                gltf.get("meshes").get(node.get("mesh").asInt()).at("/primitives/0/attributes/POSITION").asInt())));
        JsonNode front = corners.get("front");
        assertThat(front).isNotNull();
        assertThat(front.get("max").get(2).asDouble()).isGreaterThan(corners.get("back").get("max").get(2).asDouble());
        double high = front.get("max").get(1).asDouble() - front.get("min").get(1).asDouble();
        assertThat(high).isCloseTo(0.094, within(1e-6));
        assertThat(gltf.at("/materials/0/name").asText()).isEqualTo("black_cherry");
    }

    @Test
    void nothingIsWrittenWhereNoPartHasAPlace() {
        Joined joined = Projects.of("kerf 1", "board a { species white_ash; size 900 x 100 x 20 }\n"
                + "part b { length 200; width 50; thickness 15; from a }").joined();
        assertThat(Gltf.of(joined)).isEmpty();
        assertThat(Outlines.of(joined)).containsOnlyKeys("part-b");
    }

    private static List<Map<Integer, String>> entities(String dxf) {
        List<Map<Integer, String>> entities = new ArrayList<>();
        String[] lines = dxf.substring(dxf.indexOf("ENTITIES")).split("\n");
        for (int i = 1; i + 1 < lines.length; i += 2) {
            int code = Integer.parseInt(lines[i].strip());
            if (code == 0) {
                entities.add(new HashMap<>());
            }
            entities.getLast().put(code, lines[i + 1]);
        }
        return entities;
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf", "garden-bench"})
    void theFaceSideIsAsLongAndWideAsThePart(String example) {
        Joined joined = Projects.example(example).joined();
        Outlines.of(joined).values().forEach(part -> {
            var size = joined.part(part.names().getFirst()).orElseThrow().finished();
            double[] low = {1e9, 1e9};
            double[] high = {-1e9, -1e9};
            for (Map<Integer, String> each : entities(Dxf.of(part))) {
                if ("FACE_SIDE".equals(each.get(8)) && "LINE".equals(each.get(0))) {
                    for (int code : new int[]{10, 11, 20, 21}) {
                        double at = Double.parseDouble(each.getOrDefault(code, ""));
                        low[code / 10 - 1] = Math.min(low[code / 10 - 1], at);
                        high[code / 10 - 1] = Math.max(high[code / 10 - 1], at);
                    }
                }
            }
            assertThat(high[0] - low[0]).isCloseTo(size.length().mm().doubleValue(), within(1e-5));
            assertThat(high[1] - low[1]).isCloseTo(size.width().mm().doubleValue(), within(1e-5));
        });
    }

    /** Dowel holes are circles of their size and not the facets that the compiler reckons with. */
    @Test
    void roundHolesAreCircles() {
        Joined joined = Projects.joint("dowel").joined();
        List<Double> radii = entities(Dxf.of(Outlines.of(joined).get("part-partition"))).stream()
                .filter(each -> "CIRCLE".equals(each.get(0)))
                .map(each -> Double.parseDouble(each.getOrDefault(40, "")))
                .toList();
        assertThat(radii).hasSize(3).allSatisfy(radius -> assertThat(radius).isCloseTo(3, within(0.01)));
        assertThat(Dxf.of(Outlines.of(joined).get("part-partition"))).matches("\\p{ASCII}+");
    }

    @Test
    void theSameProjectGivesTheSameBytes() {
        Joined one = Projects.example("wall-shelf").joined();
        Joined other = Projects.example("wall-shelf").joined();
        assertThat(Gltf.of(one)).isEqualTo(Gltf.of(other));
        assertThat(Outlines.of(one)).isEqualTo(Outlines.of(other));
    }
}

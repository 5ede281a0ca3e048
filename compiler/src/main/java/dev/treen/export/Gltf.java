package dev.treen.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.solid.Solid;
import dev.treen.solid.SurfaceFace;
import dev.treen.solid.Vec3;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * The assembly as glTF 2.0 (Khronos Group, glTF 2.0 Specification; ISO/IEC 12113:2022): in metres, y up, the front towards
 * positive z; a node with its name for each part that has a place, a plain material for each species.
 */
public final class Gltf {
    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;
    private static final int VERTICES = 34962;
    private static final int INDICES = 34963;
    private static final int VECTOR_BYTES = 12;
    private static final int MM_PER_METRE = 1000;
    /** Browns that can be told apart; they do not claim to be the colour of any wood. Linear red, green, blue. */
    private static final double[][] BROWNS = {{0.55, 0.33, 0.16}, {0.72, 0.55, 0.33}, {0.30, 0.16, 0.08},
            {0.62, 0.42, 0.28}, {0.80, 0.68, 0.48}, {0.42, 0.24, 0.14}};

    private final Joined joined;
    private final List<Mesh> meshes = new ArrayList<>();
    private final List<String> materials = new ArrayList<>();

    /** A part as triangles, each corner with the direction that its face looks. */
    private record Mesh(String name, int material, List<float[]> corners, List<float[]> normals,
            List<Integer> triangles) {}

    private Gltf(Joined joined) {
        this.joined = joined;
        for (FinishedPart part : joined.parts()) {
            part.solid().filter(solid -> !solid.isEmpty()).ifPresent(solid -> meshes.add(mesh(part, solid)));
        }
    }

    /** The assembly as JSON with its numbers inside; empty where no part has a place. */
    public static Optional<String> of(Joined joined) {
        Gltf gltf = new Gltf(joined);
        return gltf.meshes.isEmpty() ? Optional.empty() : Optional.of(gltf.json());
    }

    private Mesh mesh(FinishedPart part, Solid solid) {
        String species = part.part().from().flatMap(Board::species).orElse("wood");
        if (!materials.contains(species)) {
            materials.add(species);
        }
        Mesh mesh = new Mesh(part.part().name(), materials.indexOf(species), new ArrayList<>(), new ArrayList<>(),
                new ArrayList<>());
        for (SurfaceFace face : solid.surface().faces()) {
            Vec3 out = face.plane().normal();
            float[] normal = turned(out, out.length());
            for (List<Vec3> piece : face.region().pieces()) {
                int first = mesh.corners.size();
                for (int i = 0; i < piece.size(); i++) {
                    mesh.corners.add(turned(piece.get(i), MM_PER_METRE));
                    mesh.normals.add(normal);
                    if (i >= 2) {
                        mesh.triangles.addAll(List.of(first, first + i - 1, first + i));
                    }
                }
            }
        }
        return mesh;
    }

    /** From z up and y to the back to y up and z to the front. */
    private static float[] turned(Vec3 vector, double by) {
        return new float[]{(float) (vector.x().doubleValue() / by), (float) (vector.z().doubleValue() / by),
                (float) (-vector.y().doubleValue() / by)};
    }

    private String json() {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.writeStartObject();
            json.writeObjectFieldStart("asset");
            json.writeStringField("version", "2.0");
            json.writeStringField("generator", "Treen");
            json.writeEndObject();
            json.writeNumberField("scene", 0);
            json.writeArrayFieldStart("scenes");
            json.writeStartObject();
            json.writeStringField("name", joined.project().settings().title());
            json.writeArrayFieldStart("nodes");
            for (int i = 0; i < meshes.size(); i++) {
                json.writeNumber(i);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndArray();
            nodes(json);
            materials(json);
            buffer(json);
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory cannot fail", impossible);
        }
        return out.append('\n').toString();
    }

    private void nodes(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("nodes");
        for (int i = 0; i < meshes.size(); i++) {
            json.writeStartObject();
            json.writeStringField("name", meshes.get(i).name());
            json.writeNumberField("mesh", i);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("meshes");
        for (int i = 0; i < meshes.size(); i++) {
            json.writeStartObject();
            json.writeStringField("name", meshes.get(i).name());
            json.writeArrayFieldStart("primitives");
            json.writeStartObject();
            json.writeObjectFieldStart("attributes");
            json.writeNumberField("POSITION", 3 * i);
            json.writeNumberField("NORMAL", 3 * i + 1);
            json.writeEndObject();
            json.writeNumberField("indices", 3 * i + 2);
            json.writeNumberField("material", meshes.get(i).material());
            json.writeEndObject();
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void materials(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("materials");
        for (int i = 0; i < materials.size(); i++) {
            double[] brown = BROWNS[i % BROWNS.length];
            json.writeStartObject();
            json.writeStringField("name", materials.get(i));
            json.writeObjectFieldStart("pbrMetallicRoughness");
            json.writeArrayFieldStart("baseColorFactor");
            for (double share : brown) {
                json.writeNumber(share);
            }
            json.writeNumber(1);
            json.writeEndArray();
            json.writeNumberField("metallicFactor", 0);
            json.writeNumberField("roughnessFactor", 0.8);
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** First all corners and normals, part by part, then all triangles. */
    private void buffer(JsonGenerator json) throws IOException {
        int vectors = meshes.stream().mapToInt(mesh -> 2 * mesh.corners().size()).sum() * VECTOR_BYTES;
        int triangles = meshes.stream().mapToInt(mesh -> mesh.triangles().size()).sum() * Integer.BYTES;
        ByteBuffer bytes = ByteBuffer.allocate(vectors + triangles).order(ByteOrder.LITTLE_ENDIAN);
        json.writeArrayFieldStart("accessors");
        int index = 0;
        for (Mesh mesh : meshes) {
            accessor(json, 0, bytes.position(), FLOAT, mesh.corners().size(), "VEC3");
            bounds(json, mesh.corners());
            json.writeEndObject();
            put(bytes, mesh.corners());
            accessor(json, 0, bytes.position(), FLOAT, mesh.normals().size(), "VEC3");
            json.writeEndObject();
            put(bytes, mesh.normals());
            accessor(json, 1, index, UNSIGNED_INT, mesh.triangles().size(), "SCALAR");
            json.writeEndObject();
            index += mesh.triangles().size() * Integer.BYTES;
        }
        json.writeEndArray();
        meshes.forEach(mesh -> mesh.triangles().forEach(bytes::putInt));
        json.writeArrayFieldStart("bufferViews");
        view(json, 0, vectors, VERTICES);
        view(json, vectors, triangles, INDICES);
        json.writeEndArray();
        json.writeArrayFieldStart("buffers");
        json.writeStartObject();
        json.writeNumberField("byteLength", bytes.capacity());
        json.writeStringField("uri", "data:application/octet-stream;base64,"
                + Base64.getEncoder().encodeToString(bytes.array()));
        json.writeEndObject();
        json.writeEndArray();
    }

    private static void accessor(JsonGenerator json, int view, int at, int component, int count, String type)
            throws IOException {
        json.writeStartObject();
        json.writeNumberField("bufferView", view);
        json.writeNumberField("byteOffset", at);
        json.writeNumberField("componentType", component);
        json.writeNumberField("count", count);
        json.writeStringField("type", type);
    }

    private static void bounds(JsonGenerator json, List<float[]> corners) throws IOException {
        for (boolean low : new boolean[]{true, false}) {
            json.writeArrayFieldStart(low ? "min" : "max");
            for (int axis = 0; axis < 3; axis++) {
                float bound = low ? Float.POSITIVE_INFINITY : Float.NEGATIVE_INFINITY;
                for (float[] corner : corners) {
                    bound = low ? Math.min(bound, corner[axis]) : Math.max(bound, corner[axis]);
                }
                // As the double that it is: a shorter text need not read as the same number everywhere.
                json.writeNumber((double) bound);
            }
            json.writeEndArray();
        }
    }

    private static void put(ByteBuffer bytes, List<float[]> vectors) {
        for (float[] vector : vectors) {
            for (float value : vector) {
                bytes.putFloat(value);
            }
        }
    }

    private static void view(JsonGenerator json, int at, int length, int target) throws IOException {
        json.writeStartObject();
        json.writeNumberField("buffer", 0);
        json.writeNumberField("byteOffset", at);
        json.writeNumberField("byteLength", length);
        if (target == VERTICES) {
            json.writeNumberField("byteStride", VECTOR_BYTES);
        }
        json.writeNumberField("target", target);
        json.writeEndObject();
    }
}

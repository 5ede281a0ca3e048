package dev.treen.cli.bench;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a JSON file into lists, maps, strings, numbers and booleans; a JSON null is an empty optional. */
final class JsonValues {
    private JsonValues() {
    }

    static Object read(Path file) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(file.toFile())) {
            parser.nextToken();
            return value(parser);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> map = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    map.put(name, value(parser));
                }
                yield map;
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    list.add(value(parser));
                }
                yield list;
            }
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT -> parser.getLongValue();
            case VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> Optional.empty();
            case END_OBJECT, END_ARRAY, FIELD_NAME, NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT -> throw new IOException(
                    "not the start of a value at " + parser.currentLocation());
        };
    }

    /** A field of an object as text, or empty. */
    static String text(Map<?, ?> object, String name) {
        return object.get(name) instanceof String s ? s : "";
    }

    /** A field of an object as a list, empty if it is missing. */
    static List<?> list(Map<?, ?> object, String name) {
        return object.get(name) instanceof List<?> list ? list : List.of();
    }

    /** A whole number, or what stands for null. */
    static long number(@Nullable Object value, long ifNull) {
        return value instanceof Number n ? n.longValue() : ifNull;
    }
}

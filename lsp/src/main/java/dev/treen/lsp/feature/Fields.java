package dev.treen.lsp.feature;

import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import java.util.List;

/** Properties with fields to be filled in, in the protocol's snippet syntax, by what they take. */
final class Fields {
    /** So many words can be chosen from in a field; of more an editor's own list is the better help. */
    private static final int MOST = 12;

    private Fields() {
    }

    /** The property with a field for each of its figures; {@code boards} are those that parts can come from. */
    static String of(PropertySchema property, List<String> boards) {
        return property.name() + ' ' + value(property.shape(), boards);
    }

    private static String value(Shape shape, List<String> boards) {
        return switch (shape) {
            case Shape.OneOf(List<String> words) -> choice(words);
            case Shape.Choice(List<String> words, var _) -> choice(words);
            case Shape.LengthOrAuto auto -> "${1:auto}";
            case Shape.Inner inner -> "{ $1 }";
            case Shape.Named named -> "{ $1 }";
            case Shape.Plain plain -> switch (plain) {
                case SIZE, SIZE_3 -> "${1:900} x ${2:140} x ${3:27}";
                case SIZE_2 -> "${1:5} x ${2:4}";
                case POINT_2 -> "${1:0}, ${2:0}";
                case POINT_3 -> "${1:0}, ${2:0}, ${3:0}";
                case ANGLE -> "${1:45}deg";
                case PERCENT -> "${1:9}%";
                case PERCENT_RANGE -> "${1:35}%..${2:65}%";
                case TEMPERATURE_RANGE -> "${1:18}degC..${2:24}degC";
                case TEXT -> "\"$1\"";
                case MASS -> "${1:20}kg";
                case COUNT -> "${1:1}";
                case BOARD -> choice(boards);
                case DIRECTION, LOAD, FLAWS, RINGS -> choice(ValueWords.of(plain));
                case LENGTH, SPECIES, STUFF, PART, PARTS, SAW, ROOM, PAIR, NUMBER -> "$1";
            };
        };
    }

    /** A field with words to choose from. */
    static String choice(List<String> words) {
        return words.isEmpty() || words.size() > MOST ? "$1" : "${1|" + String.join(",", words) + "|}";
    }
}

package dev.treen.lsp.feature;

import dev.treen.joinery.JointKinds;
import dev.treen.model.BlockSchema;
import dev.treen.model.Direction;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Schemas;
import dev.treen.model.Service;
import dev.treen.model.Shape;
import dev.treen.model.Takes;
import dev.treen.wood.SheetGood;
import dev.treen.wood.SheetGoods;
import dev.treen.wood.SpeciesTable;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The words that can be the value of a property, by its schema. */
final class ValueWords {
    private static final Set<String> OF_LANGUAGE = words(Stream.concat(
            Schemas.all().stream(), JointKinds.schemas().stream().map(JointSchema::block)).toList());

    private ValueWords() {
    }

    /** Those of a property of this shape, those that are names of species apart. */
    static List<String> of(Shape shape) {
        return switch (shape) {
            case Shape.OneOf(List<String> words) -> words;
            case Shape.LengthOrAuto auto -> List.of("auto");
            case Shape.Choice(List<String> words, BlockSchema options) -> words;
            case Shape.Inner inner -> List.of();
            case Shape.Named named -> List.of();
            case Shape.Plain plain -> switch (plain) {
                case DIRECTION -> Direction.words();
                case LOAD -> Service.USES;
                case FLAWS -> Stream.concat(Takes.KINDS.stream(), Stream.of("none")).toList();
                case STUFF -> Stream.concat(SheetGoods.foreign().stream(), SheetGoods.all().stream())
                        .map(SheetGood::id).toList();
                case RINGS -> List.of("flat", "rift", "quarter");
                case LENGTH, SIZE, SIZE_2, SIZE_3, POINT_2, POINT_3, ANGLE, PERCENT, PERCENT_RANGE, TEMPERATURE_RANGE,
                        COUNT, TEXT, SPECIES, BOARD, PART, PARTS, SAW, ROOM, PAIR, MASS, NUMBER ->
                    List.of();
            };
        };
    }

    /** All that some property of the language or of {@code patterns} takes, species with them. */
    static Set<String> all(Collection<BlockSchema> patterns) {
        if (patterns.isEmpty()) {
            return OF_LANGUAGE;
        }
        Set<String> all = words(List.copyOf(patterns));
        all.addAll(OF_LANGUAGE);
        return all;
    }

    private static Set<String> words(List<BlockSchema> schemas) {
        Set<String> all = new HashSet<>(SpeciesTable.published().ids());
        schemas.forEach(schema -> put(schema, all));
        return all;
    }

    private static void put(BlockSchema schema, Set<String> into) {
        for (PropertySchema property : schema.properties()) {
            into.addAll(of(property.shape()));
            switch (property.shape()) {
                case Shape.Inner(BlockSchema inner) -> put(inner, into);
                case Shape.Named(BlockSchema inner) -> put(inner, into);
                case Shape.Choice(List<String> _, BlockSchema options) -> put(options, into);
                case Shape.OneOf _,Shape.LengthOrAuto _,Shape.Plain _ -> {
                }
            }
        }
    }
}

package dev.treen.lsp.feature;

import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Schemas;
import dev.treen.model.Shape;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where a cursor stands: in which block, by which schema. Completion and hover share it.
 *
 * @param schema of the innermost block round the cursor; empty at the top of the file
 * @param property of the innermost statement, when the cursor stands in one of its values
 * @param given the properties that the block has already, but for the one at the cursor
 */
record Context(Optional<BlockSchema> schema, Optional<PropertySchema> property, Set<String> given) {

    static Context at(Document document, int offset) {
        return within(
                document.analysis().tree().statements(),
                Optional.empty(),
                offset,
                document.analysis().evaluation().patterns());
    }

    private static Context within(
            List<Statement> statements,
            Optional<BlockSchema> schema,
            int offset,
            Map<String, BlockSchema> patterns) {
        for (int i = 0; i < statements.size(); i++) {
            Statement statement = statements.get(i);
            Optional<Block> body = statement.body();
            boolean last = i + 1 == statements.size() || statements.get(i + 1).span().start() > offset;
            if (body.isPresent() && isIn(body.get().span(), offset, last)) {
                return within(body.get().statements(), opened(statement, schema, patterns), offset, patterns);
            }
            if (statement instanceof Statement.Property property
                    && property.span().touches(offset)
                    && property.name().span().end() < offset) {
                return new Context(schema, schema.flatMap(s -> s.property(property.name().text())),
                        given(statements, offset));
            }
        }
        return new Context(schema, Optional.empty(), given(statements, offset));
    }

    private static Set<String> given(List<Statement> statements, int offset) {
        return statements.stream()
                .filter(statement -> !statement.span().touches(offset))
                .filter(Statement.Property.class::isInstance)
                .map(statement -> ((Statement.Property) statement).name().text())
                .collect(Collectors.toSet());
    }

    /** Whether a cursor stands in a block; in one that is not closed yet also behind all that is in it. */
    static boolean isIn(Span block, int offset, boolean last) {
        return block.start() < offset
                && (offset < block.end() || (last && block.source().text().charAt(block.to() - 1) != '}'));
    }

    /** The schema of the block that a statement opens. */
    private static Optional<BlockSchema> opened(
            Statement statement, Optional<BlockSchema> around, Map<String, BlockSchema> patterns) {
        return switch (statement) {
            case Statement.Project p -> Optional.of(Schemas.PROJECT);
            case Statement.Board board -> Optional.of(board.sheet() ? Schemas.SHEET : Schemas.BOARD);
            case Statement.Part p -> Optional.of(Schemas.PART);
            case Statement.Joint joint -> JointKinds.schemas().stream()
                    .filter(s -> s.kind().equals(joint.kind().text()))
                    .map(JointSchema::block)
                    .findFirst();
            case Statement.Property property -> around
                    .flatMap(s -> s.property(property.name().text()))
                    .flatMap(p -> inner(p.shape()))
                    .or(() -> Optional.ofNullable(patterns.get(property.name().text())))
                    .or(() -> preset(property.name().text()));
            case Statement.Use u -> Optional.empty();
            case Statement.Let l -> Optional.empty();
            case Statement.Require r -> Optional.empty();
            case Statement.Accept a -> Optional.empty();
            case Statement.Measured m -> Optional.empty();
            case Statement.Holds h -> Optional.empty();
            case Statement.Pattern p -> Optional.empty();
            case Statement.Param p -> Optional.empty();
            case Statement.Repeat r -> Optional.empty();
            case Statement.When w -> Optional.empty();
            case Statement.Broken b -> around;
        };
    }

    private static Optional<BlockSchema> preset(String word) {
        return switch (word) {
            case "saw" -> Optional.of(Schemas.SAW);
            case "allow" -> Optional.of(Schemas.ALLOW);
            case "climate" -> Optional.of(Schemas.CLIMATE);
            case "species" -> Optional.of(Schemas.WOOD);
            case "glue" -> Optional.of(Schemas.GLUE);
            case "finish" -> Optional.of(Schemas.FINISH);
            case "hardware" -> Optional.of(Schemas.HARDWARE);
            default -> Optional.empty();
        };
    }

    private static Optional<BlockSchema> inner(Shape shape) {
        return switch (shape) {
            case Shape.Inner(BlockSchema schema) -> Optional.of(schema);
            case Shape.Named(BlockSchema schema) -> Optional.of(schema);
            case Shape.Choice(List<String> words, BlockSchema options) -> Optional.of(options);
            case Shape.Plain plain -> Optional.empty();
            case Shape.OneOf words -> Optional.empty();
            case Shape.LengthOrAuto auto -> Optional.empty();
        };
    }
}

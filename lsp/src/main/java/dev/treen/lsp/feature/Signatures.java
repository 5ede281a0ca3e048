package dev.treen.lsp.feature;

import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.ParameterInformation;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureInformation;

/** What a joint or the instance of a pattern can be told, while its block is being written. */
public final class Signatures {
    /** Makes the help. */
    public Signatures() {
    }

    /** A head and the block behind it. */
    private record Shown(String head, BlockSchema schema) {}

    /** The help at {@code offset}; empty outside joints and instances. */
    public Optional<SignatureHelp> at(Document document, int offset) {
        return shown(document, document.analysis().tree().statements(), offset)
                .map(shown -> help(document, shown, offset));
    }

    private static Optional<Shown> shown(Document document, List<Statement> statements, int offset) {
        for (Statement statement : statements) {
            Optional<Block> body = statement.body()
                    .filter(block -> block.span().start() < offset && offset < block.span().end());
            if (body.isPresent()) {
                return shown(document, body.get().statements(), offset).or(() -> of(document, statement));
            }
            if (statement instanceof Statement.Joint && statement.span().touches(offset)) {
                return of(document, statement);
            }
        }
        return Optional.empty();
    }

    private static Optional<Shown> of(Document document, Statement statement) {
        return switch (statement) {
            case Statement.Joint joint -> JointKinds.schemas().stream()
                    .filter(schema -> schema.kind().equals(joint.kind().text()))
                    .findFirst()
                    .map(schema -> new Shown(head(schema), schema.block()));
            case Statement.Property property -> Optional
                    .ofNullable(document.analysis().evaluation().patterns().get(property.name().text()))
                    .map(schema -> new Shown(property.name().text() + " NAME", schema));
            case Statement other -> Optional.empty();
        };
    }

    private static String head(JointSchema schema) {
        return "joint " + schema.kind() + (schema.into() ? " A into B" : " A to B");
    }

    private static SignatureHelp help(Document document, Shown shown, int offset) {
        StringBuilder label = new StringBuilder(shown.head()).append(" {");
        List<ParameterInformation> parameters = new ArrayList<>();
        Optional<String> here = Context.at(document, offset).property().map(PropertySchema::name);
        int active = -1;
        for (PropertySchema property : shown.schema().properties()) {
            label.append(parameters.isEmpty() ? " " : "; ");
            int start = label.length();
            label.append(property.name());
            ParameterInformation parameter = new ParameterInformation();
            parameter.setLabel(org.eclipse.lsp4j.jsonrpc.messages.Tuple.two(start, label.length()));
            String standard = property.standard().isEmpty() ? "" : " Default: " + property.standard() + ".";
            parameter.setDocumentation("Takes " + property.shape().phrase() + ". " + property.doc() + standard);
            if (here.filter(property.name()::equals).isPresent()) {
                active = parameters.size();
            }
            parameters.add(parameter);
        }
        SignatureInformation signature = new SignatureInformation(label.append(" }").toString());
        signature.setParameters(parameters);
        signature.setDocumentation(shown.schema().doc());
        SignatureHelp help = new SignatureHelp();
        help.setSignatures(List.of(signature));
        help.setActiveSignature(0);
        if (active >= 0) {
            help.setActiveParameter(active);
        }
        return help;
    }
}

package dev.treen.lsp.feature;

import dev.treen.joinery.Figure;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.JointKinds;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Weight;
import dev.treen.joinery.Woods;
import dev.treen.lsp.Document;
import dev.treen.model.BlockSchema;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Schemas;
import dev.treen.model.Setting;
import dev.treen.model.Settings;
import dev.treen.model.Usage;
import dev.treen.plan.Explanation;
import dev.treen.plan.MassText;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.Span;
import dev.treen.syntax.SyntaxTree;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;

/** What a word or number is: its documentation, its value and how that came about. Reads well as plain text too. */
public final class Hovers {
    private final JointHovers joints;

    /**
     * Makes hovers.
     *
     * @param pictures whether the client shows Markdown, and so may have pictures in it
     */
    public Hovers(boolean pictures) {
        joints = new JointHovers(pictures);
    }

    /** The hover at {@code offset}; empty where nothing is to be said. */
    public Optional<Hover> at(Document document, int offset) {
        List<String> lines = new ArrayList<>();
        LengthFormat format = settings(document).format();
        SyntaxTree tree = document.analysis().tree();
        Optional<Token> token = tree.tokens().stream()
                .skip(tree.tokenBehind(offset))
                .takeWhile(t -> t.start() <= offset)
                .filter(t -> t.kind() != Token.Kind.NEW_LINE)
                .findFirst();
        if (token.isEmpty()) {
            return Optional.empty();
        }
        Span at = document.file().span(token.get().start(), token.get().end());
        lines.addAll(parts(document, at, format));
        lines.addAll(settings(document, at, format));
        lines.addAll(WoodNotes.ofBoards(document, at, format));
        lines.addAll(joints.at(document, at, format));
        lines.addAll(ThingHovers.declared(document, at, format));
        lines.addAll(ThingHovers.used(document, offset));
        lines.addAll(WishedSpecies.hover(document, offset, format));
        if (lines.isEmpty()) {
            Definitions.usage(document, offset).ifPresent(usage -> lines.addAll(usage(document, usage, format)));
        }
        if (lines.isEmpty() || joint(at)) {
            word(document, at, offset, token.get().kind()).ifPresent(lines::add);
        }
        if (lines.isEmpty()) {
            document.analysis().evaluation().bareNumbers().stream()
                    .filter(m -> Names.same(m.at(), at))
                    .findFirst()
                    .ifPresent(m -> lines.add(format.text(m.value())));
        }
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Hover(
                        new MarkupContent(MarkupKind.MARKDOWN, String.join("\n\n", lines)),
                        document.positions().range(at.start(), at.end())));
    }

    private static boolean joint(Span at) {
        return JointKinds.named(at.text()).isPresent();
    }

    private static List<String> parts(Document document, Span at, LengthFormat format) {
        List<String> lines = new ArrayList<>();
        for (FinishedPart part : document.analysis().joined().parts()) {
            if (Names.same(part.part().nameAt(), at)) {
                lines.add("part `" + part.part().name() + "`");
                if (!part.part().doc().isEmpty()) {
                    lines.add(part.part().doc());
                }
                lines.add("seen " + part.part().seen().text(format));
                lines.add("finished " + part.finished().text(format));
                lines.add(part.part().bought().map(bought -> "bought ready: " + Woods.name(bought))
                        .orElseGet(() -> "rough " + part.rough().text(format)));
                lines.addAll(MassText.of(Weight.of(part, document.analysis().checked().joined()), format));
                lines.add(block(Explanation.of(part.length().how(), settings(document))));
                lines.add(block(Explanation.of(part.width().how(), settings(document))));
                lines.addAll(WoodNotes.ofPart(document, part.part().name(), format));
            }
        }
        return lines;
    }

    private static List<String> settings(Document document, Span at, LengthFormat format) {
        for (MadeJoint joint : document.analysis().joined().joints()) {
            for (Figure figure : joint.figures()) {
                Setting setting = joint.joint().settings().get(figure.name());
                if (setting != null && (Names.same(setting.valueAt(), at) || Names.same(setting.nameAt(), at))) {
                    List<String> lines = new ArrayList<>(List.of(
                            figure.name() + " of " + joint.joint().name() + ": "
                                    + format.text(figure.measure().value()),
                            block(Explanation.of(figure.measure().how(), settings(document)))));
                    if (figure.name().equals("gap")) {
                        lines.addAll(WoodNotes.years(document, joint.joint().left().name(), format));
                    }
                    return lines;
                }
            }
        }
        return List.of();
    }

    private static List<String> usage(Document document, Usage usage, LengthFormat format) {
        Derivation how = known(document, usage).value().how();
        if (usage.value().value() instanceof Datum.Thing) {
            return ThingHovers.said(document, usage, format);
        }
        return List.of(block(Explanation.of(how, settings(document))));
    }

    /** In a way that is not taken a name has no value; then another place that says it. */
    private static Usage known(Document document, Usage usage) {
        return usage.value().value() instanceof Datum.Unknown
                ? document.analysis().evaluation().usages().stream()
                        .filter(each -> Names.same(each.declaredAt(), usage.declaredAt())
                                && !(each.value().value() instanceof Datum.Unknown))
                        .findFirst()
                        .orElse(usage)
                : usage;
    }

    private static Settings settings(Document document) {
        return document.analysis().evaluation().project().settings();
    }

    private static String block(String text) {
        return "```text\n" + text + "\n```";
    }

    private static Optional<String> word(Document document, Span at, int offset, Token.Kind kind) {
        String word = at.text();
        Context context = Context.at(document, offset);
        Optional<PropertySchema> property = context.schema().flatMap(s -> s.property(word)).or(context::property);
        if (property.isPresent()) {
            PropertySchema p = property.get();
            String standard = p.standard().isEmpty() ? "" : " Default: " + p.standard() + ".";
            return Optional.of("`" + p.name() + "` takes " + p.shape().phrase() + ". " + p.doc() + standard);
        }
        Optional<BlockSchema> block = JointKinds.schemas().stream()
                .map(JointSchema::block)
                .filter(b -> b.word().equals(word))
                .findFirst()
                .or(() -> Schemas.all().stream().filter(b -> b.word().equals(word)).findFirst());
        return block.map(b -> b.doc() + "\n\n" + block(b.example()))
                .or(() -> kind == Token.Kind.WORD || kind == Token.Kind.RESERVED
                        ? Keywords.named(word)
                                .map(each -> "`" + word + "`: " + each.doc() + "\n\n" + block(each.example()))
                        : Optional.empty());
    }
}

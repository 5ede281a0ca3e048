package dev.treen.plan;

import dev.treen.finding.Finding;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Project;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a project means, declaration by declaration, as text that can be compared: every value, and no place in a file.
 * Made by looking at the records themselves, so that nothing that the model learns later is forgotten here.
 */
public final class ModelText {
    private ModelText() {
    }

    /** Each declaration by name, with all its values. */
    public static Map<String, String> of(Compilation compilation) {
        Map<String, String> text = new TreeMap<>();
        Project project = compilation.joined().project();
        text.put("settings", value(project.settings()));
        project.boards().forEach(board -> text.put("board " + board.name(), value(board)));
        project.requirements()
                .forEach(each -> text.put("require " + squeezed(each.at().text()), value(each.because())));
        project.acceptances().forEach(each -> text.put("accept " + each.code() + each.on(), value(each)));
        for (FinishedPart part : compilation.joined().parts()) {
            text.put("part " + part.part().name(), value(part.part()));
            text.put("finished " + part.part().name(), value(part.finished()) + value(part.rough()));
        }
        for (MadeJoint joint : compilation.joined().joints()) {
            text.put("joint " + joint.joint().name(), joint(joint.joint()) + value(joint.figures()));
        }
        return text;
    }

    /** What is said of it: the codes with their words, in order. */
    public static List<String> findings(Compilation compilation) {
        return compilation.checked().findings().stream().map(ModelText::finding).toList();
    }

    private static String finding(Finding finding) {
        return squeezed(finding.code() + ": " + finding.headline() + finding.found() + " at " + finding.at().text());
    }

    private static String joint(Joint joint) {
        return joint.kind() + joint.left().name() + joint.into() + joint.right().name()
                + value(new TreeMap<>(joint.settings()));
    }

    private static String value(Object value) {
        return switch (value) {
            case Span place -> "";
            case SourceFile file -> "";
            case Derivation how -> "";
            case Optional<?> maybe -> maybe.map(ModelText::value).orElse("none");
            case Collection<?> many -> many.stream().map(ModelText::value).toList().toString();
            case Map<?, ?> map ->
                map.entrySet().stream().map(e -> e.getKey() + value(e.getValue())).toList().toString();
            case Record record -> record(record);
            default -> squeezed(value.toString());
        };
    }

    private static String record(Record record) {
        StringBuilder text = new StringBuilder(record.getClass().getSimpleName()).append('(');
        for (RecordComponent each : record.getClass().getRecordComponents()) {
            try {
                each.getAccessor().setAccessible(true);
                text.append(value(each.getAccessor().invoke(record))).append(' ');
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        return text.append(')').toString();
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s;]+", "");
    }
}

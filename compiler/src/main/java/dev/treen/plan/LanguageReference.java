package dev.treen.plan;

import dev.treen.joinery.JointKinds;
import dev.treen.model.BlockSchema;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Schemas;
import java.util.ArrayList;
import java.util.List;

/** The part of the language's reference that comes from its schema: every block and joint with its properties. */
public final class LanguageReference {
    /** Stands before the generated part in {@code grammar/LANGUAGE.md}. */
    public static final String BEGIN = "<!-- from the schema; do not edit by hand -->";

    /** Stands after it. */
    public static final String END = "<!-- end of what comes from the schema -->";

    private LanguageReference() {
    }

    /** The generated part, with its marks. */
    public static String markdown() {
        List<String> lines = new ArrayList<>();
        lines.add(BEGIN);
        lines.add("");
        lines.add("## Blocks");
        Schemas.all().forEach(block -> block(block, "", lines));
        lines.add("");
        lines.addAll(List.of("## Joints", "", "All of them in pictures: [grammar/joints](joints/README.md)."));
        for (JointSchema joint : JointKinds.schemas()) {
            block(joint.block(), form(joint), lines);
            lines.addAll(
                    List.of("", "Drawings, numbers and work: [" + joint.kind() + "](joints/" + joint.kind() + ".md)."));
        }
        lines.add("");
        lines.add(END);
        return String.join("\n", lines);
    }

    private static void block(BlockSchema block, String before, List<String> lines) {
        lines.add("");
        lines.add("### " + block.word());
        lines.add("");
        lines.add(before + block.doc());
        uses(block, lines);
    }

    /** How a joint is written, as a sentence with a blank after it. */
    static String form(JointSchema joint) {
        return "Written `joint " + joint.kind() + " a " + (joint.into() ? "into" : "to") + " b`. ";
    }

    /** The example of a block and the table of its properties. */
    static void uses(BlockSchema block, List<String> lines) {
        lines.add("");
        lines.add("```treen");
        lines.add(block.example());
        lines.add("```");
        if (!block.properties().isEmpty()) {
            lines.add("");
            lines.add("| property | takes | when absent | what it is |");
            lines.add("| --- | --- | --- | --- |");
            block.properties().forEach(property -> lines.add(row(property)));
        }
    }

    private static String row(PropertySchema property) {
        String absent = property.needed() ? "must be there"
                : property.standard().isEmpty() ? "nothing" : property.standard();
        String again = property.repeats() ? " May stand more than once." : "";
        return "| `" + property.name() + "` | " + cell(property.shape().phrase()) + " | " + cell(absent) + " | "
                + cell(property.doc()) + again + " |";
    }

    /** Text for a cell of a table. */
    static String cell(String text) {
        return text.replace("|", "\\|");
    }
}

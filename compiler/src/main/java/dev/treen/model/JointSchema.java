package dev.treen.model;

import java.util.List;

/**
 * A kind of joint as the language sees it; the joint's own class in `joinery` declares it.
 *
 * @param into whether it is written {@code a into b}; otherwise {@code a to b}
 */
public record JointSchema(BlockSchema block, boolean into) {
    /** The kind: mitre, groove, … */
    public String kind() {
        return block.word();
    }

    /** A joint of two equals. */
    public static JointSchema to(String kind, String doc, String example, List<PropertySchema> properties) {
        return new JointSchema(new BlockSchema(kind, doc, example, properties), false);
    }

    /** A joint in which one part enters the other. */
    public static JointSchema into(String kind, String doc, String example, List<PropertySchema> properties) {
        return new JointSchema(new BlockSchema(kind, doc, example, properties), true);
    }
}

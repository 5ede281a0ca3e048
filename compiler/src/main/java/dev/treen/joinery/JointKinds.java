package dev.treen.joinery;

import dev.treen.model.JointSchema;
import java.util.List;
import java.util.Optional;

/** Every kind of joint that Treen knows. */
public final class JointKinds {
    private static final List<JointKind> ALL = List.of(new Mitre(), new Butt(), new Rebate(), new Groove(),
            new Housing(), new Inset(), new Lip(), new MortiseTenon(), new Button(), new Breadboard(), new Dovetail(),
            new Finger(), new Halving(), new Bridle(), new Dowel(), new TongueGroove(), new Edge(), new Spline(),
            new SlidingDovetail(),
            new Screw(), new Nail(), new Hinge(), new Batten(), new CornerBlock(), new LidLine());
    private static final List<JointSchema> SCHEMAS = ALL.stream().map(JointKind::schema).toList();

    private JointKinds() {
    }

    /** All kinds. */
    public static List<JointKind> all() {
        return ALL;
    }

    /** How the language writes them. */
    public static List<JointSchema> schemas() {
        return SCHEMAS;
    }

    /** The kind called {@code name}. */
    public static Optional<JointKind> named(String name) {
        return ALL.stream().filter(k -> k.schema().kind().equals(name)).findFirst();
    }
}

package dev.treen.joinery;

import dev.treen.model.Joint;
import java.util.List;
import java.util.Optional;

/**
 * A joint with its numbers settled and the work it asks for.
 *
 * @param fasteners its screws or nails, where it is made with any
 * @param hardware what it takes besides wood and glue
 * @param pieces the small pieces of wood that it takes
 */
public record MadeJoint(
        Meeting meeting, List<Figure> figures, List<Work> works, Optional<Fasteners> fasteners,
        List<Hardware> hardware, List<LoosePiece> pieces) {
    /** Keeps its own copies. */
    public MadeJoint {
        figures = List.copyOf(figures);
        works = List.copyOf(works);
        hardware = List.copyOf(hardware);
        pieces = List.copyOf(pieces);
    }

    /** The same with the work that it asks for. */
    MadeJoint asking(List<Work> asked) {
        return new MadeJoint(meeting, figures, asked, fasteners, hardware, pieces);
    }

    /** The same with another number of its statement. */
    MadeJoint numbered(int statement) {
        Meeting with = new Meeting(joint().numbered(statement), meeting.left(), meeting.right(), meeting.contact());
        return new MadeJoint(with, figures, works, fasteners, hardware, pieces);
    }

    /** What the project says of it. */
    public Joint joint() {
        return meeting.joint();
    }

    /** Whether it holds its two parts fast to each other. */
    public boolean holdsFast() {
        return (fasteners.isPresent() || !foreign())
                && JointKinds.named(joint().kind()).map(JointKind::holdsFast).orElse(true)
                && fasteners.map(Fasteners::fast).orElse(true);
    }

    /** Whether one of its parts is bought and of nothing that glue holds, as a pane of glass. */
    public boolean foreign() {
        return joint().left().foreign() || joint().right().foreign();
    }

    /** Whether both parts share a block of wood, cheek on cheek, as in halvings and bridles. */
    public boolean laps() {
        return figure(Lap.REACH).isPresent();
    }

    /** Whether it is a mitre, plain, keyed or with a loose tongue. */
    public boolean mitred() {
        return joint().kind().equals(Mitre.KIND)
                || (joint().kind().equals(Spline.KIND) && meeting.edge().isPresent());
    }

    /** Whether a mitre has more than its glue to hold it: keys or a loose tongue. */
    public boolean reinforced() {
        return joint().kind().equals(Spline.KIND) || figure(MitreKeys.THICK).isPresent();
    }

    /** The figure called {@code name}. */
    public Optional<Figure> figure(String name) {
        return figures.stream().filter(f -> f.name().equals(name)).findFirst();
    }
}

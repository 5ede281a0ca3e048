package dev.treen.joinery;

import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.Unit;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a joint must know beyond its own two parts. */
public final class Surroundings {
    private final Settings settings;
    private final Map<String, Nature> natures = new HashMap<>();
    private final Map<Edge, List<Meeting>> grooved = new HashMap<>();
    private final Map<Edge, List<Meeting>> ploughed = new HashMap<>();

    private final Map<String, Meeting> lines = new HashMap<>();
    private final Map<String, List<Made>> cuts = new HashMap<>();
    private final Map<String, List<Meeting>> ofLeft = new HashMap<>();
    private final Additions additions;

    /** What a joint has cut out of a part. */
    record Made(Meeting by, Cut cut) {}
    private final Map<String, List<Meeting>> tenons = new HashMap<>();

    private record Edge(String part, Side side) {}

    Surroundings(Settings settings, List<Meeting> meetings, Additions additions) {
        this.settings = settings;
        this.additions = additions;
        for (Meeting meeting : meetings) {
            ofLeft.computeIfAbsent(meeting.left().part().name(), part -> new ArrayList<>(2)).add(meeting);
            if (meeting.joint().kind().equals(LidLine.KIND)) {
                lines.putIfAbsent(meeting.right().part().name(), meeting);
            }
            if (meeting.joint().kind().equals(MortiseTenon.KIND)) {
                tenons.computeIfAbsent(meeting.right().part().name(), part -> new ArrayList<>(2)).add(meeting);
            }
            if (meeting.joint().kind().equals(Groove.KIND)) {
                meeting.face().ifPresent(side -> {
                    grooved.computeIfAbsent(new Edge(meeting.left().part().name(), side), edge -> new ArrayList<>(1))
                            .add(meeting);
                    ploughed.computeIfAbsent(
                            new Edge(meeting.right().part().name(), side.opposite()), edge -> new ArrayList<>(1))
                            .add(meeting);
                });
            }
        }
    }

    /** The project's settings. */
    public Settings settings() {
        return settings;
    }

    /** Whether the project is written in inches. */
    boolean inches() {
        return settings.units() == Unit.IN;
    }

    /** The step to which a depth or a lip of Treen's choosing is rounded: half a millimetre or 1/32 in. */
    Length markOfTheRule() {
        return inches() ? Length.ofInches(1, 32) : Length.ofMm(1).dividedBy(2);
    }

    /** A part with all that the joints made so far add to it. */
    Box grown(Meeting.Placed placed) {
        return additions.grown(placed.part(), placed.box());
    }

    /** The meetings of the same statement that have the same left part. */
    List<Meeting> alike(Meeting meeting) {
        return ofLeft.getOrDefault(meeting.left().part().name(), List.of()).stream()
                .filter(other -> other.joint().statement() == meeting.joint().statement())
                .toList();
    }

    /** All joints in which a part is the left one. */
    List<Meeting> ofLeft(Part part) {
        return ofLeft.getOrDefault(part.name(), List.of());
    }

    /** The line at which a lid is cut free of a wall, where there is one that leaves wood on both sides. */
    Optional<SawLine> line(Part part) {
        return Optional.ofNullable(lines.get(part.name())).flatMap(meeting -> SawLine.of(meeting, this))
                .filter(SawLine::within);
    }

    /** Notes what a joint cuts. */
    void cut(Meeting by, Cut cut) {
        cuts.computeIfAbsent(cut.part(), part -> new ArrayList<>()).add(new Made(by, cut));
    }

    /** What the joints made so far have cut out of a part. */
    List<Made> cuts(Part part) {
        return cuts.getOrDefault(part.name(), List.of());
    }

    /** How a part's wood moves. */
    public Nature nature(Part part) {
        return natures.computeIfAbsent(part.name(), name -> Nature.of(part, settings));
    }

    /**
     * Whether a groove joins one board of a row to the next, edge to edge: the boards before or after them are joined
     * likewise. A panel enters stiles that enter nothing.
     */
    boolean inRow(Meeting meeting, Side side) {
        boolean edges = meeting.left().measure(side.axis()) == 1 && meeting.right().measure(side.axis()) == 1
                && meeting.left().placing().length().axis() == meeting.right().placing().length().axis();
        return edges && (ploughed.containsKey(new Edge(meeting.left().part().name(), side.opposite()))
                || grooved.containsKey(new Edge(meeting.right().part().name(), side)));
    }

    /** The groove that is ploughed in a part on one of its sides, where there is one. */
    Optional<Meeting> ploughed(Part part, Side side) {
        return Optional.ofNullable(ploughed.get(new Edge(part.name(), side))).map(List::getFirst);
    }

    /** The tenons that enter a part. */
    List<Meeting> tenonsInto(Part part) {
        return tenons.getOrDefault(part.name(), List.of());
    }

    /** A groove on the part's opposite side, where there is one: then it cannot give way. */
    Optional<Meeting> opposite(Part part, Side side) {
        return Optional.ofNullable(grooved.get(new Edge(part.name(), side.opposite())))
                .map(List::getFirst);
    }
}

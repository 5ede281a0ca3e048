package dev.treen.joinery;

import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.solid.Side;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a joint must know beyond its own two parts. */
public final class Surroundings {
    private final Settings settings;
    private final Map<String, Nature> natures = new HashMap<>();
    private final Map<String, Integer> entering = new HashMap<>();

    Surroundings(Settings settings, List<Meeting> meetings) {
        this.settings = settings;
        for (Meeting meeting : meetings) {
            if (meeting.joint().kind().equals(Groove.KIND)) {
                meeting.face().ifPresent(side -> entering.put(key(meeting.joint().left(), side), 1));
            }
        }
    }

    private static String key(Part part, Side side) {
        return part.name() + " " + side;
    }

    /** The project's settings. */
    public Settings settings() {
        return settings;
    }

    /** How a part's wood moves. */
    public Nature nature(Part part) {
        return natures.computeIfAbsent(part.name(), name -> Nature.of(part, settings));
    }

    /** Whether the part's opposite side is in a groove too, so that it cannot give way. */
    boolean heldOpposite(Part part, Side side) {
        return entering.containsKey(key(part, side.opposite()));
    }
}

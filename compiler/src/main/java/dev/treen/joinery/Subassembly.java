package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import java.util.List;

/**
 * Parts that joints tie together, with those joints, made on their own: no joint asks after parts that it is not tied to.
 * One that is kept from an earlier version of an edited project is the same object.
 */
public final class Subassembly {
    private final Joined joined;

    Subassembly(Joined joined) {
        this.joined = joined;
    }

    /** Its parts and joints as if they were all of the project; of the project's own lists it has no others. */
    public Joined joined() {
        return joined;
    }

    /** Whether it would come out the same of these. */
    boolean isOf(Settings settings, List<Part> parts, List<Joint> joints) {
        return joined.project().settings().equals(settings)
                && joined.project().parts().equals(parts)
                && sameButForNumbers(joined.project().joints(), joints);
    }

    /** The number of a statement only says which joints are of one; it grows where a statement is put in before. */
    private static boolean sameButForNumbers(List<Joint> one, List<Joint> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            Joint mine = one.get(i);
            Joint its = other.get(i);
            boolean together = i > 0 && mine.statement() == one.get(i - 1).statement();
            boolean alsoTogether = i > 0 && its.statement() == other.get(i - 1).statement();
            if (together != alsoTogether || !mine.saysTheSameAs(its)) {
                return false;
            }
        }
        return true;
    }
}

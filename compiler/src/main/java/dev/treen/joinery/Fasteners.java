package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.wood.PullOut;

/**
 * The screws or nails of one joint.
 *
 * @param form what they are
 * @param count how many
 * @param slotted how many of them stand in slots, where the wood can move past them
 * @param thick how thick one is
 * @param grip how far one reaches into the right part
 * @param hold over what length of it one holds there: the thread of a screw, all of a nail
 * @param endGrain whether they enter end grain
 * @param over how far apart the outermost of those lie that stand in no slot
 */
public record Fasteners(
        PullOut.Fastener form,
        int count,
        int slotted,
        Length thick,
        Length grip,
        Length hold,
        boolean endGrain,
        Length over) {

    /** Whether any of them holds both parts to one another, so that neither can move past it. */
    public boolean fast() {
        return slotted < count;
    }
}

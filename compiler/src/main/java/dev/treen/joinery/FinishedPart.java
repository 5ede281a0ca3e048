package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.quantity.Size;
import dev.treen.solid.Solid;
import java.util.Optional;

/**
 * A part with all that its joints add: the finished sizes, then with allowances the rough ones.
 *
 * @param length finished, over all
 * @param roughLength finished plus allowances: what is sawn from the board; of thickness the least that comes off the saw
 * @param shape its shape in the assembly, where it is placed
 */
public record FinishedPart(
        Part part,
        Measure length,
        Measure width,
        Measure thickness,
        Measure roughLength,
        Measure roughWidth,
        Measure roughThickness,
        Optional<Shaped> shape) {

    /** Its shape in the assembly, where it is placed; cut at the first look. */
    public Optional<Solid> solid() {
        return shape.map(Shaped::solid);
    }

    /** Its shape without the holes of screws, nails and pegs: enough to see the whole, and how parts come apart. */
    public Optional<Solid> bare() {
        return shape.map(Shaped::bare);
    }

    /** The finished size. */
    public Size finished() {
        return new Size(length.value(), width.value(), thickness.value());
    }

    /** The rough size. */
    public Size rough() {
        return new Size(roughLength.value(), roughWidth.value(), roughThickness.value());
    }
}

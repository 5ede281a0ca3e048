package dev.treen.lsp.feature;

import dev.treen.model.Part;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import java.util.ArrayList;
import java.util.List;

/** How large parts are together, as they are put together. */
final class OverAll {
    private OverAll() {
    }

    /**
     * How many {@code parts} there are, and where all of them have places what they take up together: from left to
     * right, from front to back and from foot to top. Seen sizes count, for what joints add lies in the other part.
     */
    static String text(List<Part> parts, LengthFormat format) {
        String count = parts.size() == 1 ? "1 part" : parts.size() + " parts";
        if (parts.isEmpty() || parts.stream().anyMatch(part -> part.placing().isEmpty())) {
            return count;
        }
        List<Length> over = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            int along = axis;
            Length low = parts.stream()
                    .flatMap(part -> part.placing().map(lies -> lies.low(part, along)).stream())
                    .reduce((one, other) -> one.compareTo(other) <= 0 ? one : other).orElseThrow();
            Length high = parts.stream()
                    .flatMap(part -> part.placing().map(lies -> lies.high(part, along)).stream())
                    .reduce((one, other) -> one.compareTo(other) >= 0 ? one : other).orElseThrow();
            over.add(high.minus(low));
        }
        return count + ", " + new Size(over.get(0), over.get(1), over.get(2)).text(format) + " over all";
    }
}

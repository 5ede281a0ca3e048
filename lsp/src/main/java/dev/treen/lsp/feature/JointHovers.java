package dev.treen.lsp.feature;

import dev.treen.drawing.JointPicture;
import dev.treen.drawing.JointSheets;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.lsp.Document;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.Span;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** What is shown of a joint: a small picture of its parts apart, the numbers it settled, and what of the parts meets. */
final class JointHovers {
    /** Larger pictures are left out: a hover is text that goes through the editor's protocol. */
    static final int MOST_BYTES = 8192;
    private static final int MOST_PAIRS = 4;

    private final boolean pictures;

    JointHovers(boolean pictures) {
        this.pictures = pictures;
    }

    /** For the kind of a joint all pairs of its statement; for the {@code to} or {@code into} of a pair that pair. */
    List<String> at(Document document, Span at, LengthFormat format) {
        Joined joined = document.analysis().checked().joined();
        List<MadeJoint> pairs = joined.joints().stream().filter(made -> tells(made, at)).toList();
        if (pairs.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        if (pictures) {
            picture(joined, pairs.getFirst()).ifPresent(lines::add);
        }
        pairs.stream().limit(MOST_PAIRS).map(pair -> numbers(pair, format)).forEach(lines::add);
        if (pairs.size() > MOST_PAIRS) {
            lines.add("and " + (pairs.size() - MOST_PAIRS) + " more pairs");
        }
        return lines;
    }

    private static boolean tells(MadeJoint made, Span at) {
        Span pair = made.joint().at();
        boolean between = pair.file().equals(at.file()) && pair.start() <= at.start() && at.end() <= pair.end()
                && (at.text().equals("to") || at.text().equals("into"));
        return between || Names.same(made.joint().kindAt(), at);
    }

    private static String numbers(MadeJoint made, LengthFormat format) {
        List<String> figures = made.figures().stream()
                .map(figure -> figure.name() + " " + format.text(figure.measure().value()))
                .toList();
        return made.joint().name() + (figures.isEmpty() ? "" : ": " + String.join(", ", figures)) + ". "
                + made.meeting().sentence();
    }

    private static Optional<String> picture(Joined joined, MadeJoint pair) {
        return JointPicture.quick(joined, pair)
                .map(JointSheets::small)
                .map(svg -> svg.getBytes(StandardCharsets.UTF_8))
                .filter(bytes -> bytes.length <= MOST_BYTES)
                .map(bytes -> "![" + pair.joint().kind() + ", apart](data:image/svg+xml;base64,"
                        + Base64.getEncoder().encodeToString(bytes) + ")");
    }
}

package dev.treen.check;

import dev.treen.joinery.Nature;
import java.util.List;
import java.util.stream.Stream;

/** Says what was assumed because a project is silent. */
final class Silences {
    private Silences() {
    }

    /** A clause for a sentence that gives moisture contents, or nothing. */
    static String phrase(Nature nature) {
        List<String> words = nature.assumed().stream()
                .sorted()
                .flatMap(silence -> switch (silence) {
                    case CLIMATE -> Stream.of("the room");
                    case MOISTURE -> Stream.of("the moisture at the bench");
                    case SPECIES -> Stream.of("the species");
                    case RINGS -> Stream.empty();
                })
                .toList();
        return words.isEmpty() || nature.still() ? "" : " (assumed: " + String.join(", ", words) + ")";
    }
}

package dev.treen.lsp.feature;

import java.util.Map;
import java.util.Optional;

/** Whole statements to be filled in, for editors that go from field to field; each compiles as it stands. */
final class Snippets {
    private static final Map<String, String> BODIES = Map.ofEntries(
            Map.entry("project", """
                    project "${1:Tea caddy}" {
                        units ${2|mm,cm,in|}
                    }"""),
            Map.entry("board", """
                    board ${1:plank} {
                        species   ${2:black_cherry}
                        size      ${3:900} x ${4:140} x ${5:27}
                        moisture  ${6:9}%
                    }"""),
            Map.entry("part", """
                    part ${1:front} {
                        length     ${2:160}
                        width      ${3:84}
                        thickness  ${4:9}
                    }"""),
            Map.entry("let", "let ${1:wall} = ${2:9}"),
            Map.entry("repeat", """
                    repeat ${1:i} in 1..${2:3} {
                        part ${3:slat}[${1:i}] { length ${4:300}; width ${5:40}; thickness ${6:12} }
                    }"""),
            Map.entry("require", "require ${1:1 < 2} because \"${2:the reason}\""));

    private Snippets() {
    }

    /** The statement that begins with {@code word}, in the protocol's snippet syntax. */
    static Optional<String> of(String word) {
        return Optional.ofNullable(BODIES.get(word));
    }
}

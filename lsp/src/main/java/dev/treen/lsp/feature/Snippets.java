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
            Map.entry("sheet", """
                    sheet ${1:birch_ply} {
                        size  ${2:1220} x ${3:610} x ${4:6}
                    }"""),
            Map.entry("hardware", "hardware ${1:brass_hinge} { kind hinge; long ${2:40} }"),
            Map.entry("use", "use \"${1:treen/box}\""),
            Map.entry("when", """
                    when ${1:1 < 2} {
                        part ${2:shelf} { length ${3:300}; width ${4:90}; thickness ${5:12} }
                    }"""),
            Map.entry("pattern", """
                    pattern ${1:frame} {
                        param ${2:stile} : length = ${3:57mm}
                        part ${4:side} { length ${5:300}; width ${2:stile}; thickness ${6:20} }
                    }"""),
            Map.entry("param", "param ${1:stile} : ${2|length,size,count,angle,text,part,board|} = ${3:57mm}"),
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

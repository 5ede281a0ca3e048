package dev.treen.lsp.position;

import java.util.Arrays;
import java.util.Optional;
import org.eclipse.lsp4j.ClientCapabilities;

/** What the protocol counts within a line. All three agree on ASCII; a degree sign is enough for them to differ. */
public enum PositionEncoding {

    /** Bytes of UTF-8. */
    UTF8("utf-8"),

    /** Units of UTF-16, what a Java string is made of: the protocol's fallback, which every client knows. */
    UTF16("utf-16"),

    /** Unicode code points. */
    UTF32("utf-32");

    private final String wireName;

    PositionEncoding(String wireName) {
        this.wireName = wireName;
    }

    /** The name used in {@code positionEncodings} and {@code positionEncoding}. */
    public String wireName() {
        return wireName;
    }

    /**
     * Picks the encoding for a session: the first in the client's order of preference that is known here. A client
     * that says nothing counts in UTF-16.
     */
    public static PositionEncoding negotiate(ClientCapabilities client) {
        return Optional.ofNullable(client.getGeneral())
                .map(general -> general.getPositionEncodings())
                .flatMap(offered -> offered.stream().flatMap(name -> named(name).stream()).findFirst())
                .orElse(UTF16);
    }

    private static Optional<PositionEncoding> named(String wireName) {
        return Arrays.stream(values()).filter(each -> each.wireName.equals(wireName)).findFirst();
    }

    /** How far a code point moves the count. */
    int width(int codePoint) {
        return switch (this) {
            case UTF8 -> utf8Width(codePoint);
            case UTF16 -> Character.charCount(codePoint);
            case UTF32 -> 1;
        };
    }

    /** A surrogate on its own has no form in UTF-8: it travels as the replacement character, which takes three bytes. */
    private static int utf8Width(int codePoint) {
        if (codePoint < 0x80) {
            return 1;
        }
        if (codePoint < 0x800) {
            return 2;
        }
        return codePoint < 0x10000 ? 3 : 4;
    }
}

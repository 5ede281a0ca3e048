package dev.treen.lsp.position;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PositionsTest {

    /** Letters of one to four bytes, a combining mark (e + acute), and a character outside the basic plane. */
    private static final String BENCH_NOTE = "½ in at 20° e\u0301 \uD83E\uDEB5!";

    /** Source: Language Server Protocol 3.17, "Position", which counts this very line in UTF-16. */
    @Test
    void countsTheLineThatTheProtocolGivesAsItsExample() {
        String text = "a\uD801\uDC00b";
        assertThat(Positions.of(text, PositionEncoding.UTF16).position(1)).isEqualTo(new Position(0, 1));
        assertThat(Positions.of(text, PositionEncoding.UTF16).position(3)).isEqualTo(new Position(0, 3));
        assertThat(Positions.of(text, PositionEncoding.UTF8).position(3)).isEqualTo(new Position(0, 5));
        assertThat(Positions.of(text, PositionEncoding.UTF32).position(3)).isEqualTo(new Position(0, 2));
    }

    /** Source: the Unicode forms as the JDK's own encoders write them. */
    @Test
    void agreesWithTheJdkOnEveryCharacter() {
        Positions utf8 = Positions.of(BENCH_NOTE, PositionEncoding.UTF8);
        Positions utf16 = Positions.of(BENCH_NOTE, PositionEncoding.UTF16);
        Positions utf32 = Positions.of(BENCH_NOTE, PositionEncoding.UTF32);
        for (int offset = 0; offset <= BENCH_NOTE.length(); offset = next(BENCH_NOTE, offset)) {
            String before = BENCH_NOTE.substring(0, offset);
            assertThat(utf8.position(offset).getCharacter())
                    .isEqualTo(before.getBytes(StandardCharsets.UTF_8).length);
            assertThat(utf16.position(offset).getCharacter())
                    .isEqualTo(before.getBytes(StandardCharsets.UTF_16BE).length / 2);
            assertThat(utf32.position(offset).getCharacter()).isEqualTo(before.codePointCount(0, before.length()));
        }
    }

    @Test
    void aPlaceInsideACharacterIsMovedToItsBeginning() {
        String text = "x\uD83E\uDEB5y"; // a log of wood: two UTF-16 units, four bytes
        assertThat(Positions.of(text, PositionEncoding.UTF16).offset(new Position(0, 2))).isEqualTo(1);
        assertThat(Positions.of(text, PositionEncoding.UTF16).position(2)).isEqualTo(new Position(0, 1));
        for (int inside = 2; inside < 5; inside++) {
            assertThat(Positions.of(text, PositionEncoding.UTF8).offset(new Position(0, inside))).isEqualTo(1);
        }
        assertThat(Positions.of(text, PositionEncoding.UTF8).offset(new Position(0, 5))).isEqualTo(3);
        assertThat(Positions.of("20°", PositionEncoding.UTF8).offset(new Position(0, 3))).isEqualTo(2);
    }

    @Test
    void aCombiningMarkIsAPlaceOfItsOwn() {
        String text = "e\u0301x";
        for (PositionEncoding encoding : List.of(PositionEncoding.UTF16, PositionEncoding.UTF32)) {
            assertThat(Positions.of(text, encoding).offset(new Position(0, 1))).isEqualTo(1);
            assertThat(Positions.of(text, encoding).offset(new Position(0, 2))).isEqualTo(2);
        }
        assertThat(Positions.of(text, PositionEncoding.UTF8).offset(new Position(0, 3))).isEqualTo(2);
    }

    @Test
    void aSurrogateOnItsOwnTakesThePlaceOfAReplacementCharacter() {
        String text = "\uDEB5x\uD83E";
        assertThat(Positions.of(text, PositionEncoding.UTF8).position(1)).isEqualTo(new Position(0, 3));
        assertThat(Positions.of(text, PositionEncoding.UTF8).position(3)).isEqualTo(new Position(0, 7));
        assertThat(Positions.of(text, PositionEncoding.UTF16).position(3)).isEqualTo(new Position(0, 3));
        assertThat(Positions.of(text, PositionEncoding.UTF32).position(3)).isEqualTo(new Position(0, 3));
    }

    /** Source: Language Server Protocol 3.17, "Text Documents": the three line ends, and none of them in a position. */
    @Test
    void knowsTheThreeLineEnds() {
        Positions positions = Positions.of("a\nbb\r\nccc\rd\r\r\n", PositionEncoding.UTF16);
        assertThat(positions.lineCount()).isEqualTo(6);
        assertThat(positions.position(2)).isEqualTo(new Position(1, 0));
        assertThat(positions.position(6)).isEqualTo(new Position(2, 0));
        assertThat(positions.position(10)).isEqualTo(new Position(3, 0));
        assertThat(positions.position(5)).as("between \\r and \\n").isEqualTo(new Position(1, 2));
        assertThat(positions.position(14)).isEqualTo(new Position(5, 0));
    }

    @Test
    void aPlaceOutsideTheTextIsMovedIntoIt() {
        Positions positions = Positions.of("ab\r\ncd", PositionEncoding.UTF16);
        assertThat(positions.offset(new Position(0, 99))).as("past the end of a line").isEqualTo(2);
        assertThat(positions.offset(new Position(1, Integer.MAX_VALUE))).isEqualTo(6);
        assertThat(positions.offset(new Position(99, 0))).as("past the last line").isEqualTo(6);
        assertThat(positions.offset(new Position(-1, 1))).isZero();
        assertThat(positions.offset(new Position(1, -1))).isEqualTo(4);
        assertThat(positions.offset(new Position(Integer.MIN_VALUE, Integer.MIN_VALUE))).isZero();
        assertThat(positions.position(-5)).isEqualTo(new Position(0, 0));
        assertThat(positions.position(Integer.MAX_VALUE)).isEqualTo(new Position(1, 2));
        assertThat(Positions.of("", PositionEncoding.UTF8).offset(new Position(3, 3))).isZero();
    }

    @Test
    void aRangeTheWrongWayRoundIsTurned() {
        Positions positions = Positions.of("abc", PositionEncoding.UTF16);
        assertThat(positions.span(new Range(new Position(0, 3), new Position(0, 1))))
                .isEqualTo(new Positions.Span(1, 3));
        assertThat(positions.range(1, 3)).isEqualTo(new Range(new Position(0, 1), new Position(0, 3)));
    }

    /** Whatever the text: an offset at a character's beginning comes back from its position, and no position throws. */
    @ParameterizedTest
    @EnumSource(PositionEncoding.class)
    void thereAndBackIsTheSamePlace(PositionEncoding encoding) {
        String[] pieces = {"a", "½", "°", "e\u0301", "\uD83E\uDEB5", "\n", "\r\n", "\r", " ", "\uD83E", "\uDEB5", "木"};
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            StringBuilder built = new StringBuilder();
            for (int i = random.nextInt(40); i > 0; i--) {
                built.append(pieces[random.nextInt(pieces.length)]);
            }
            String text = built.toString();
            Positions positions = Positions.of(text, encoding);
            for (int offset = 0; offset <= text.length(); offset++) {
                int back = positions.offset(positions.position(offset));
                boolean between = offset > 0 && offset < text.length() && (insideCharacter(text, offset)
                        || (text.charAt(offset - 1) == '\r' && text.charAt(offset) == '\n'));
                assertThat(back).as("%s at %d", text, offset).isEqualTo(between ? offset - 1 : offset);
            }
            for (int i = 0; i < 20; i++) {
                Position wild = new Position(random.nextInt(60) - 10, random.nextInt(60) - 10);
                assertThat(positions.offset(wild)).isBetween(0, text.length());
            }
        }
    }

    @Test
    void theClientsFirstKnownChoiceIsTaken() {
        assertThat(PositionEncoding.negotiate(client("utf-8", "utf-32", "utf-16"))).isEqualTo(PositionEncoding.UTF8);
        assertThat(PositionEncoding.negotiate(client("utf-32", "utf-8"))).isEqualTo(PositionEncoding.UTF32);
        assertThat(PositionEncoding.negotiate(client("ebcdic", "utf-32"))).isEqualTo(PositionEncoding.UTF32);
    }

    @Test
    void aClientThatSaysNothingCountsInUtf16() {
        assertThat(PositionEncoding.negotiate(new ClientCapabilities())).isEqualTo(PositionEncoding.UTF16);
        assertThat(PositionEncoding.negotiate(client())).isEqualTo(PositionEncoding.UTF16);
        assertThat(PositionEncoding.negotiate(client("ebcdic"))).isEqualTo(PositionEncoding.UTF16);
        ClientCapabilities general = new ClientCapabilities();
        general.setGeneral(new GeneralClientCapabilities());
        assertThat(PositionEncoding.negotiate(general)).isEqualTo(PositionEncoding.UTF16);
    }

    private static ClientCapabilities client(String... encodings) {
        GeneralClientCapabilities general = new GeneralClientCapabilities();
        general.setPositionEncodings(List.of(encodings));
        ClientCapabilities client = new ClientCapabilities();
        client.setGeneral(general);
        return client;
    }

    private static boolean insideCharacter(String text, int offset) {
        return Character.isLowSurrogate(text.charAt(offset)) && Character.isHighSurrogate(text.charAt(offset - 1));
    }

    private static int next(String text, int offset) {
        return offset == text.length() ? offset + 1 : offset + Character.charCount(text.codePointAt(offset));
    }
}

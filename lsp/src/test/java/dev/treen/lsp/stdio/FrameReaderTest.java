package dev.treen.lsp.stdio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.json.StreamMessageProducer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Timeout(60)
class FrameReaderTest {

    private static final Limits SMALL = new Limits(2_000, 20, 1 << 20);

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    /** Source: LSP4J's own reader, which is right for streams without a fault. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithTheLibraryOnSoundStreams(int seed) throws IOException {
        Random random = new Random(seed);
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        for (int i = 0; i < 20; i++) {
            stream.write(TestClient.framed(message(random, i)));
        }
        MessageJsonHandler json = new MessageJsonHandler(Map.of());
        List<String> theirs = new ArrayList<>();
        new StreamMessageProducer(new ByteArrayInputStream(stream.toByteArray()), json)
                .listen(message -> theirs.add(json.serialize(message)));
        List<String> ours = bodies(stream.toByteArray(), random).stream()
                .map(body -> json.serialize(json.parseMessage(body))).toList();
        assertThat(ours).hasSize(20).isEqualTo(theirs);
    }

    /** Whatever is put between them, every sound message is found, and nothing is found that is none. */
    @ParameterizedTest
    @MethodSource("seeds")
    void findsEverySoundMessageAmongRubbish(int seed) throws IOException {
        Random random = new Random(seed);
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        List<String> sent = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            stream.write(rubbish(random));
            sent.add(message(random, i));
            stream.write(TestClient.framed(sent.getLast()));
        }
        stream.write(rubbish(random));
        assertThat(bodies(stream.toByteArray(), random)).isEqualTo(sent);
    }

    @Test
    void noBytesGiveNothingButTheEnd() throws IOException {
        for (int seed = 0; seed < 2_000; seed++) {
            Random random = new Random(seed);
            byte[] noise = new byte[random.nextInt(300)];
            random.nextBytes(noise);
            bodies(noise, random);
        }
    }

    /** The cost must not grow with the square of the length, or a few megabytes would stop the server. */
    @Test
    void aStreamOfNothingButHeadersTakesTimeInProportion() throws IOException {
        byte[] headers = "Content-Length: 16000000\r\n\r\n{\"a\":[".repeat(400_000).getBytes(StandardCharsets.US_ASCII);
        FrameReader frames = new FrameReader(new ByteArrayInputStream(headers), Limits.DEFAULT);
        int refused = 0;
        while (frames.next() instanceof Frame.Refused) {
            refused++;
        }
        assertThat(refused).isEqualTo(399_999);
    }

    @Test
    void aStringMayHoldWhatLooksLikeAHeader() throws IOException {
        String body = "{\"method\":\"x\",\"params\":\"Content-Length: 5\\r\\n\\r\\n{} }{[ \\\" \\\\\"}";
        byte[] stream = TestClient.framed(body);
        assertThat(bodies(stream, new Random(1))).containsExactly(body);
    }

    private static List<String> bodies(byte[] stream, Random random) throws IOException {
        FrameReader frames = new FrameReader(inPieces(stream, random), SMALL);
        List<String> bodies = new ArrayList<>();
        while (true) {
            switch (frames.next()) {
                case Frame.Body(String text) -> bodies.add(text);
                case Frame.Refused refused -> assertThat(refused.beginning().length()).isLessThan(1 << 17);
                case Frame.End() -> {
                    return bodies;
                }
            }
        }
    }

    /** Gives as few bytes at a time as it likes, as a pipe does. */
    private static InputStream inPieces(byte[] bytes, Random random) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] into, int offset, int length) {
                return super.read(into, offset, Math.min(length, 1 + random.nextInt(40)));
            }
        };
    }

    private static String message(Random random, int id) {
        String text = "½ in, 20°, \uD83E\uDEB5 \\\"\\\\ \\u00bd \\r\\n {[".substring(random.nextInt(5));
        String padding = "x".repeat(random.nextInt(200));
        return "{\"jsonrpc\":\"2.0\",\"id\":\"" + id + "\",\"method\":\"x\",\"params\":{\"a\":[1,-2.5e3,true,null,\""
                + text
                + padding + "\"]}}";
    }

    /** Faults that may stand between two messages without the second one being lost. */
    private static byte[] rubbish(Random random) {
        String sound = "{\"id\":9,\"method\":\"y\"}";
        String rubbish = switch (random.nextInt(12)) {
            case 0 -> "";
            case 1 -> "no header\r\n";
            case 2 -> "no line end";
            case 3 -> "Content-Length: -1\r\n\r\n";
            case 4 -> "Content-Length: 9" + random.nextInt(99_999) + "\r\n\r\n" + sound;
            case 5 -> "Content-Length: 99999999\r\n\r\n{\"a\":\"" + "y".repeat(random.nextInt(5_000)) + "\"}";
            case 6 -> "Content-Length: 5\r\n\r\n" + sound;
            case 7 -> "Content-Length: 30\r\n\r\n" + "[".repeat(30);
            case 8 -> "Content-Length: 4000\r\n\r\n" + "{\"a\":".repeat(500) + "1" + "}".repeat(500) + " ".repeat(999);
            case 9 -> "Content-Length: 151\r\n\r\n" + "{\"a\":".repeat(25) + "1" + "}".repeat(25);
            case 10 -> "x".repeat(random.nextInt(70_000));
            default -> "Content-Length: 3\r\n\r\n\u00ff{}";
        };
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            bytes.write(rubbish.getBytes(StandardCharsets.ISO_8859_1));
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}

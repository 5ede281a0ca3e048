package dev.treen.lsp.stdio;

import dev.treen.lsp.stdio.Frame.Reason;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Cuts a stream into messages by their {@code Content-Length}, exactly, and finds its way back when a header, a length
 * or a body is wrong. Memory is bounded by the longest message allowed, and grows only as bytes really arrive.
 */
final class FrameReader {

    /** Enough of a refused message to find its number in: clients write it first. */
    private static final int KEPT = 64 << 10;
    /** A header is far shorter; of a longer line only the end is looked at, where a real header may follow rubbish. */
    private static final int LINE = 256;
    private static final String LENGTH_HEADER = "content-length:";

    private final InputStream in;
    private final Limits limits;
    private final byte[] buffer = new byte[64 << 10];
    private int next;
    private int end;
    /** The name of a header that was met while skipping: the next line begins with it. */
    private String recovered = "";

    FrameReader(InputStream in, Limits limits) {
        this.in = in;
        this.limits = limits;
    }

    /** Waits for the next message. */
    Frame next() throws IOException {
        long length = headers();
        if (length < 0) {
            return new Frame.End();
        }
        return body(length);
    }

    /** Reads lines up to the blank one that follows a length; −1 at the end of the stream. */
    private long headers() throws IOException {
        long length = -1;
        while (true) {
            String line = line();
            if (line == null) {
                return -1;
            }
            if (line.isEmpty() && length >= 0) {
                return length;
            }
            long found = lengthIn(line);
            length = found >= 0 ? found : length;
        }
    }

    /** One line of ASCII without its end, or its last {@value #LINE} characters; null at the end of the stream. */
    private @Nullable String line() throws IOException {
        StringBuilder line = new StringBuilder(recovered);
        recovered = "";
        while (true) {
            if (next == end && !fill()) {
                return null;
            }
            byte b = buffer[next++];
            if (b == '\n') {
                if (!line.isEmpty() && line.charAt(line.length() - 1) == '\r') {
                    line.setLength(line.length() - 1);
                }
                return line.toString();
            }
            line.append((char) (b & 0xff));
            if (line.length() >= 2 * LINE) {
                line.delete(0, line.length() - LINE);
            }
        }
    }

    /** The number in a length header; −1 where the line is something else. A number too long to be held is just long. */
    private static long lengthIn(String line) {
        int at = line.toLowerCase(Locale.ROOT).lastIndexOf(LENGTH_HEADER);
        if (at < 0) {
            return -1;
        }
        String number = line.substring(at + LENGTH_HEADER.length()).strip();
        if (number.isEmpty() || !number.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return -1;
        }
        return number.length() > 18 ? Long.MAX_VALUE : Long.parseLong(number);
    }

    private Frame body(long length) throws IOException {
        boolean tooLong = length > limits.message();
        int kept = tooLong ? KEPT : (int) length;
        ByteArrayOutputStream body = new ByteArrayOutputStream(Math.min(kept, 8 << 10));
        JsonShape shape = new JsonShape();
        long left = length;
        while (left > 0) {
            if (next == end && !fill()) {
                return new Frame.End();
            }
            int available = (int) Math.min(left, end - next);
            int sound = shape.follow(buffer, next, next + available) - next;
            body.write(buffer, next, Math.clamp(kept - body.size(), 0, sound));
            next += sound;
            left -= sound;
            if (shape.state() == JsonShape.State.BROKEN) {
                skip(left);
                return new Frame.Refused(tooLong ? Reason.TOO_LONG : Reason.NO_JSON, beginning(body));
            }
        }
        if (tooLong) {
            return new Frame.Refused(Reason.TOO_LONG, beginning(body));
        }
        if (shape.state() != JsonShape.State.COMPLETE) {
            return new Frame.Refused(Reason.NO_JSON, beginning(body));
        }
        if (shape.deepest() > limits.nesting()) {
            return new Frame.Refused(Reason.TOO_DEEP, beginning(body));
        }
        return new Frame.Body(body.toString(StandardCharsets.UTF_8));
    }

    private static String beginning(ByteArrayOutputStream body) {
        return new String(body.toByteArray(), 0, Math.min(body.size(), KEPT), StandardCharsets.UTF_8);
    }

    /**
     * Passes over the rest of a broken body, but not over a header in it: where the length was wrong, that is where the
     * next message begins.
     */
    private void skip(long count) throws IOException {
        long left = count;
        int matched = 0;
        while (left > 0 && (next < end || fill())) {
            int c = Character.toLowerCase(buffer[next] & 0xff);
            // The header's first letter occurs once in it, so a failed match can only begin anew at this very byte.
            matched = c == LENGTH_HEADER.charAt(matched) ? matched + 1 : c == 'c' ? 1 : 0;
            next++;
            left--;
            if (matched == LENGTH_HEADER.length()) {
                recovered = LENGTH_HEADER;
                return;
            }
        }
    }

    private boolean fill() throws IOException {
        next = 0;
        end = Math.max(0, in.read(buffer, 0, buffer.length));
        return end > 0;
    }
}

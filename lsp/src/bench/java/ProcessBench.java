import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Measures whole processes, as a maker meets them. Run from the root of the repository after a build:
 *
 * <pre>java lsp/src/bench/java/ProcessBench.java [lines] [edits] [pairs]</pre>
 *
 * It prints the start-up of {@code treen check} on the tea caddy as a ratio to a hello-world JVM (medians of paired
 * runs), and the time from an edit to its diagnostics on a generated project, through the real stdio protocol of
 * {@code treen lsp}. Compare ratios: the figures of two machines, or of a busy one, say little about each other.
 */
final class ProcessBench {
    private static final int LINES_A_BOX = 25;

    private ProcessBench() {
    }

    public static void main(String[] arguments) throws Exception {
        int lines = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000;
        int edits = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 500;
        int pairs = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 15;
        startUp(pairs);
        editing(lines, edits);
    }

    // ---- start-up

    private static void startUp(int pairs) throws Exception {
        Path folder = Files.createTempDirectory("treen-bench");
        Path hello = folder.resolve("Hello.java");
        Files.writeString(hello,
                "public class Hello { public static void main(String[] a) { System.out.println(1); } }");
        String home = System.getProperty("java.home");
        run(home + "/bin/javac", "-d", folder.toString(), hello.toString());
        List<String> plain = List.of(home + "/bin/java", "-cp", folder.toString(), "Hello");
        List<String> treen = List.of("./treen", "check", "examples/tea-caddy/tea-caddy.treen");
        for (int i = 0; i < 3; i++) {
            run(treen.toArray(String[]::new));
        }
        double[] helloTimes = new double[pairs];
        double[] treenTimes = new double[pairs];
        for (int i = 0; i < pairs; i++) {
            helloTimes[i] = run(plain.toArray(String[]::new));
            treenTimes[i] = run(treen.toArray(String[]::new));
        }
        double one = median(helloTimes);
        double other = median(treenTimes);
        System.out.printf(Locale.ROOT,
                "start-up: hello world %.0f ms, treen check %.0f ms, ratio %.2f (medians of %d pairs)%n",
                one, other, other / one, pairs);
    }

    private static double run(String... command) throws Exception {
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.waitFor();
        return (System.nanoTime() - begin) / 1e6;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    // ---- edit to diagnostics

    private static String project(int lines) {
        StringBuilder text = new StringBuilder("""
                project "Bench" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 3000 x 200 x 30; moisture 9% }
                """);
        for (int box = 0; 2 + box * LINES_A_BOX < lines; box++) {
            text.append(box(box));
        }
        return text.toString();
    }

    private static String box(int n) {
        return """
                let wall_%1$d = 9
                let inside_%1$d = 160 x 80 x 70
                let x_%1$d = %2$d
                part front_%1$d {
                  length     inside_%1$d.length
                  width      84
                  thickness  wall_%1$d
                  from       plank
                  place      { length right; width up; at x_%1$d, -wall_%1$d, 0 }
                }
                part back_%1$d like front_%1$d { place { at x_%1$d, inside_%1$d.width, 0 } }
                part left_%1$d {
                  length     inside_%1$d.width
                  width      84
                  thickness  wall_%1$d
                  from       plank
                  place      { length back; width up; at x_%1$d - wall_%1$d, 0, 0 }
                }
                part right_%1$d like left_%1$d { place { at x_%1$d + inside_%1$d.length, 0, 0 } }
                part base_%1$d {
                  length inside_%1$d.length; width inside_%1$d.width; thickness 7; from plank
                  place { length right; width back; at x_%1$d, 0, 5 }
                }
                joint mitre front_%1$d to left_%1$d, left_%1$d to back_%1$d, back_%1$d to right_%1$d, right_%1$d to front_%1$d
                joint groove base_%1$d into front_%1$d, back_%1$d, left_%1$d, right_%1$d { wide 5; deep 4; gap 0.9 }
                """.formatted(n, n * 300);
    }

    private static void editing(int lines, int edits) throws Exception {
        String text = project(lines);
        long count = text.lines().count();
        Process server = new ProcessBuilder("./treen", "lsp").redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try (OutputStream out = server.getOutputStream();
                InputStream in = new BufferedInputStream(server.getInputStream())) {
            send(out, "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}");
            read(in);
            send(out, "{\"jsonrpc\":\"2.0\",\"method\":\"initialized\",\"params\":{}}");
            send(out, "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\",\"params\":{\"textDocument\":{\"uri\":"
                    + "\"file:///bench.treen\",\"languageId\":\"treen\",\"version\":0,\"text\":" + quoted(text)
                    + "}}}");
            awaitVersion(in, 0);
            // One figure in the middle of the file goes to and fro: 0.9 is right, 0.1 is too tight.
            int at = text.indexOf("gap 0.", text.length() / 2) + "gap 0.".length();
            int line = (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
            int column = at - text.lastIndexOf('\n', at) - 1;
            List<Double> times = new ArrayList<>();
            for (int edit = 1; edit <= edits; edit++) {
                String change = "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didChange\",\"params\":{\"textDocument\":{\"uri\":"
                        + "\"file:///bench.treen\",\"version\":" + edit
                        + "},\"contentChanges\":[{\"range\":{\"start\":{\"line\":"
                        + line + ",\"character\":" + column + "},\"end\":{\"line\":" + line + ",\"character\":"
                        + (column + 1)
                        + "}},\"text\":\"" + (edit % 2 == 1 ? "1" : "9") + "\"}]}}";
                long begin = System.nanoTime();
                send(out, change);
                String published = awaitVersion(in, edit);
                times.add((System.nanoTime() - begin) / 1e6);
                if ((edit % 2 == 1) != published.contains("panel-tight")) {
                    throw new IllegalStateException("edit " + edit + " got the wrong diagnostics: " + published);
                }
            }
            report(count, times);
            send(out, "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}");
            send(out, "{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
        }
    }

    private static void report(long lines, List<Double> times) {
        List<Double> warm = times.subList(times.size() / 2, times.size());
        double[] sorted = warm.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(Locale.ROOT,
                "edit to diagnostics, %d lines: first %.0f ms; warm (last %d edits) p50 %.1f ms, p99 %.1f ms, most %.1f ms%n",
                lines, times.getFirst(), sorted.length, sorted[sorted.length / 2],
                sorted[(int) Math.ceil(sorted.length * 0.99) - 1], sorted[sorted.length - 1]);
    }

    private static String awaitVersion(InputStream in, int version) throws IOException {
        Pattern wanted = Pattern.compile("\"version\"\\s*:\\s*" + version + "\\D");
        while (true) {
            String message = read(in);
            Matcher found = wanted.matcher(message);
            if (message.contains("textDocument/publishDiagnostics") && found.find()) {
                return message;
            }
        }
    }

    private static void send(OutputStream out, String json) throws IOException {
        byte[] body = json.getBytes(StandardCharsets.UTF_8);
        out.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        out.write(body);
        out.flush();
    }

    private static String read(InputStream in) throws IOException {
        int length = 0;
        StringBuilder line = new StringBuilder();
        while (true) {
            int c = in.read();
            if (c < 0) {
                throw new IOException("the server ended");
            }
            if (c == '\n') {
                String header = line.toString().strip();
                line.setLength(0);
                if (header.isEmpty()) {
                    return new String(in.readNBytes(length), StandardCharsets.UTF_8);
                }
                if (header.toLowerCase(Locale.ROOT).startsWith("content-length:")) {
                    length = Integer.parseInt(header.substring("content-length:".length()).strip());
                }
            } else {
                line.append((char) c);
            }
        }
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }
}

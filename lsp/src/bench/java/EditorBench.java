import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Measures what an editor waits for, through the stdio protocol of a real {@code treen lsp}. Run from the root of the
 * repository after a build:
 *
 * <pre>java [-Dtreen.command="..."] lsp/src/bench/java/EditorBench.java [rounds] [lines]...</pre>
 *
 * Each round makes one seeded edit somewhere in a generated project, waits for its diagnostics, and asks for
 * completion, hover and the change of the colours. The first quarter of the rounds warms up and is not counted. The
 * table goes into DEVELOPERS.md. On a busy machine look at the processor time of a round, which does not count waiting
 * for others.
 *
 * <p>With {@code -Dtreen.memory=true} it also says, after each tenth of the rounds, what the server's heap holds once
 * all that nobody needs is cleared away, which {@code jcmd} of the same Java is asked for, and how many threads it has:
 * a session that lets go of what it has done holds the same from the second tenth to the last.
 *
 * <p>{@code -Dtreen.rest=400} rests so many milliseconds after each round, in which the server looks at bodies and
 * layouts as it does when a maker thinks; {@code -Dtreen.minutes=60} goes on for that long, however many rounds it
 * takes.
 */
final class EditorBench {
    private static final int LINES_A_BOX = 26;
    private static final int BOXES_A_ROW = 50;
    private static final int TYPED_AMISS = 4;
    private static final double WARMED_UP = 0.25;
    private static final int REST = Integer.getInteger("treen.rest", 0);
    private static final int MINUTES = Integer.getInteger("treen.minutes", 0);

    private final OutputStream out;
    private final InputStream in;
    private final StringBuilder text;
    private final Map<String, List<Double>> times = new LinkedHashMap<>();
    private int version;
    private int id = 1;
    private String colours = "";

    private EditorBench(Process server, String text) {
        this.out = server.getOutputStream();
        this.in = new BufferedInputStream(server.getInputStream());
        this.text = new StringBuilder(text);
    }

    public static void main(String[] arguments) throws Exception {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 400;
        List<Integer> sizes = new ArrayList<>();
        for (int i = 1; i < arguments.length; i++) {
            sizes.add(Integer.parseInt(arguments[i]));
        }
        System.out.println("| lines | what is waited for | p50 ms | p99 ms | most ms |");
        System.out.println("| --- | --- | --- | --- | --- |");
        for (int lines : sizes.isEmpty() ? List.of(200, 2_000, 20_000) : sizes) {
            session(lines, rounds);
        }
    }

    private static void session(int lines, int rounds) throws Exception {
        Process server = new ProcessBuilder(System.getProperty("treen.command", "./treen lsp").split(" "))
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try {
            EditorBench bench = new EditorBench(server, project(lines));
            bench.begin();
            Random random = new Random(lines);
            Duration before = Duration.ZERO;
            int round = 0;
            int warm = 0;
            int tenths = 0;
            long begun = System.nanoTime();
            for (double done = 0; done < 1; done = done(begun, round, rounds)) {
                if (warm == 0 && done >= WARMED_UP) {
                    bench.times.clear();
                    before = used(server);
                    warm = round;
                }
                bench.round(random, round);
                round++;
                Thread.sleep(REST);
                if (Boolean.getBoolean("treen.memory") && done(begun, round, rounds) * 10 >= tenths + 1) {
                    tenths++;
                    System.out.printf(Locale.ROOT,
                            "| %,d | heap after %,d rounds and %d s, MB; threads | %.1f | %d | |%n",
                            lines, round, (System.nanoTime() - begun) / 1_000_000_000L, held(server), threads(server));
                }
            }
            double processor = used(server).minus(before).toNanos() / 1e6 / (round - warm);
            bench.report(lines, processor);
            bench.send("{\"jsonrpc\":\"2.0\",\"id\":0,\"method\":\"shutdown\"}");
            bench.send("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
        } finally {
            server.destroy();
        }
    }

    /** The part of the session that is over, from nothing to one. */
    private static double done(long begun, int round, int rounds) {
        return MINUTES > 0 ? (System.nanoTime() - begun) / 60e9 / MINUTES : (double) round / rounds;
    }

    private static long threads(Process server) throws IOException {
        return asked(java(server).pid(), "Thread.print").lines().filter(line -> line.startsWith("\"")).count();
    }

    /** Megabytes that are in use after a full collection. */
    private static double held(Process server) throws IOException {
        long pid = java(server).pid();
        asked(pid, "GC.run");
        // A full collection moves all that lives to the old part; the young one holds what jobs have made since.
        var old = Pattern.compile("(?m)^ *(?:tenured|Tenured|garbage-first|total|ZHeap)\\b.*?used (\\d+)([KM])")
                .matcher(asked(pid, "GC.heap_info"));
        if (!old.find()) {
            throw new IllegalStateException("no used heap in " + asked(pid, "GC.heap_info"));
        }
        return Double.parseDouble(old.group(1)) / ("K".equals(old.group(2)) ? 1024 : 1);
    }

    private static String asked(long pid, String what) throws IOException {
        Process jcmd = new ProcessBuilder(System.getProperty("java.home") + "/bin/jcmd", Long.toString(pid), what)
                .redirectErrorStream(true).start();
        return new String(jcmd.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static Duration used(Process server) {
        return java(server).info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** The server itself: where the launcher gives way to it, the process that was started, else the first child. */
    private static ProcessHandle java(Process server) {
        // The server may have the start-up cache made by a child of its own, which is not what is measured here.
        return Stream.concat(Stream.of(server.toHandle()), server.children())
                .filter(each -> each.info().command().orElse("").endsWith("java")).findFirst()
                .orElseThrow(() -> new IllegalStateException("no Java runs in " + server.info()));
    }

    private void begin() throws IOException {
        send("{\"jsonrpc\":\"2.0\",\"id\":0,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}");
        read();
        send("{\"jsonrpc\":\"2.0\",\"method\":\"initialized\",\"params\":{}}");
        send("{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\",\"params\":{\"textDocument\":{\"uri\":"
                + "\"file:///bench.treen\",\"languageId\":\"treen\",\"version\":0,\"text\":" + quoted(text.toString())
                + "}}}");
        awaitVersion();
        keepColours(ask("semanticTokens/full", ""));
    }

    /** A figure goes to and fro, so that 0.9 is right and 0.1 too tight; now and then a line is broken and mended. */
    private void round(Random random, int round) throws IOException {
        int gap = text.indexOf("gap 0.", random.nextInt(text.length() * 9 / 10));
        gap = (gap < 0 ? text.indexOf("gap 0.") : gap) + "gap 0.".length();
        if (round % TYPED_AMISS == 0) {
            edit(gap, gap, "{");
            edit(gap, gap + 1, "");
        }
        boolean tight = text.charAt(gap) == '9';
        boolean alone = text.indexOf("gap 0.1") < 0;
        String published = edit(gap, gap + 1, tight ? "1" : "9");
        if (alone && tight != published.contains("panel-tight")) {
            throw new IllegalStateException("round " + round + " got the wrong diagnostics: " + published);
        }
        int part = text.lastIndexOf("part base_", gap);
        timed("completion", "completion", at(text.indexOf("from plank", part) + "from ".length()));
        timed("hover", "hover", at(part + "part ".length()));
        keepColours(
                timed("change of colours", "semanticTokens/full/delta", ",\"previousResultId\":\"" + colours + '"'));
        if (text.charAt(gap) == '1') {
            edit(gap, gap + 1, "9");
        }
    }

    private String edit(int start, int end, String with) throws IOException {
        version++;
        String change = "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didChange\",\"params\":{\"textDocument\":{\"uri\":"
                + "\"file:///bench.treen\",\"version\":" + version + "},\"contentChanges\":[{\"range\":{\"start\":"
                + position(start) + ",\"end\":" + position(end) + "},\"text\":" + quoted(with) + "}]}}";
        text.replace(start, end, with);
        long begin = System.nanoTime();
        send(change);
        String published = awaitVersion();
        note("edit to diagnostics", begin);
        return published;
    }

    private String timed(String name, String method, String more) throws IOException {
        long begin = System.nanoTime();
        String answer = ask(method, more);
        note(name, begin);
        return answer;
    }

    private void note(String name, long begin) {
        times.computeIfAbsent(name, n -> new ArrayList<>()).add((System.nanoTime() - begin) / 1e6);
    }

    private String ask(String method, String more) throws IOException {
        id++;
        send("{\"jsonrpc\":\"2.0\",\"id\":" + id + ",\"method\":\"textDocument/" + method
                + "\",\"params\":{\"textDocument\":{\"uri\":\"file:///bench.treen\"}" + more + "}}");
        Pattern answered = Pattern.compile("\"id\"\\s*:\\s*\"?" + id + "\\D");
        while (true) {
            String message = read();
            if (answered.matcher(message.substring(0, Math.min(60, message.length()))).find()) {
                if (message.contains("\"error\":") || message.contains("\"result\":null")) {
                    throw new IllegalStateException(method + " was answered by " + message);
                }
                return message;
            }
        }
    }

    private void keepColours(String answer) {
        var found = Pattern.compile("\"resultId\":\"([^\"]*)\"").matcher(answer);
        colours = found.find() ? found.group(1) : "";
    }

    private String at(int offset) {
        return ",\"position\":" + position(offset);
    }

    private String position(int offset) {
        int line = 0;
        int start = 0;
        for (int i = text.indexOf("\n"); i >= 0 && i < offset; i = text.indexOf("\n", i + 1)) {
            line++;
            start = i + 1;
        }
        return "{\"line\":" + line + ",\"character\":" + (offset - start) + '}';
    }

    private void report(int lines, double processor) {
        times.forEach((what, all) -> {
            double[] sorted = all.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            System.out.printf(Locale.ROOT, "| %,d | %s | %.1f | %.1f | %.1f |%n", lines, what,
                    sorted[sorted.length / 2],
                    sorted[(int) Math.ceil(sorted.length * 0.99) - 1], sorted[sorted.length - 1]);
        });
        System.out.printf(Locale.ROOT, "| %,d | processor time of a round | %.1f | | |%n", lines, processor);
    }

    private String awaitVersion() throws IOException {
        Pattern wanted = Pattern.compile("\"version\"\\s*:\\s*" + version + "\\D");
        while (true) {
            String message = read();
            if (message.contains("textDocument/publishDiagnostics") && wanted.matcher(message).find()) {
                return message;
            }
        }
    }

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
                let y_%1$d = %3$d
                part front_%1$d {
                  length     inside_%1$d.length
                  width      84
                  thickness  wall_%1$d
                  from       plank
                  place      { length right; width up; at x_%1$d, y_%1$d - wall_%1$d, 0 }
                }
                part back_%1$d like front_%1$d { place { at x_%1$d, y_%1$d + inside_%1$d.width, 0 } }
                part left_%1$d {
                  length     inside_%1$d.width
                  width      84
                  thickness  wall_%1$d
                  from       plank
                  place      { length back; width up; at x_%1$d - wall_%1$d, y_%1$d, 0 }
                }
                part right_%1$d like left_%1$d { place { at x_%1$d + inside_%1$d.length, y_%1$d, 0 } }
                part base_%1$d {
                  length inside_%1$d.length; width inside_%1$d.width; thickness 7; from plank
                  place { length right; width back; at x_%1$d, y_%1$d, 5 }
                }
                joint mitre front_%1$d to left_%1$d, left_%1$d to back_%1$d, back_%1$d to right_%1$d, right_%1$d to front_%1$d
                joint groove base_%1$d into front_%1$d, back_%1$d, left_%1$d, right_%1$d { wide 5; deep 4; gap 0.9 }
                """.formatted(n, n % BOXES_A_ROW * 300, n / BOXES_A_ROW * 300);
    }

    private void send(String json) throws IOException {
        byte[] body = json.getBytes(StandardCharsets.UTF_8);
        out.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        out.write(body);
        out.flush();
    }

    private String read() throws IOException {
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

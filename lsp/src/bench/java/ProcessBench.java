import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Measures whole processes, as a maker meets them. Run from the root of the repository after a build:
 *
 * <pre>java lsp/src/bench/java/ProcessBench.java [pairs]</pre>
 *
 * It prints the start-up of {@code treen check} on the tea caddy as a ratio to a hello-world JVM (medians of paired
 * runs). Compare ratios: the figures of two machines, or of a busy one, say little about each other.
 */
final class ProcessBench {
    private ProcessBench() {
    }

    public static void main(String[] arguments) throws Exception {
        startUp(arguments.length > 0 ? Integer.parseInt(arguments[0]) : 15);
    }

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
}

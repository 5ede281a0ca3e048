package dev.treen.cli;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.ForkJoinPool;

/** Builds projects in a Java of its own, and says first where it believes to be: {@code OUT FILE...}. */
final class Elsewhere {
    private Elsewhere() {
    }

    @SuppressWarnings("SystemOut") // It is a program of its own, whose output the test reads.
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        // The default locale on purpose: it is what is told.
        out.println(Locale.getDefault().toLanguageTag() + " " + String.format(Locale.getDefault(), "%d", 12) + " "
                + "i".toUpperCase(Locale.getDefault()) + " " + TimeZone.getDefault().getID() + " "
                + Runtime.getRuntime().availableProcessors() + " " + ForkJoinPool.commonPool().getParallelism());
        for (String file : List.of(arguments).subList(1, arguments.length)) {
            ByteArrayOutputStream said = new ByteArrayOutputStream();
            PrintStream words = new PrintStream(said, true, StandardCharsets.UTF_8);
            Path name = Path.of(file).getFileName();
            int exit = Main.run(List.of("build", file, "-o", Path.of(arguments[0]).resolve(name).toString()),
                    new Subcommand.Streams(InputStream.nullInputStream(), words, words));
            if (exit != 0) {
                out.println(said.toString(StandardCharsets.UTF_8));
                System.exit(exit);
            }
        }
    }
}

package dev.treen.lsp;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher, with stand-ins for Java and Maven that only tell how they were called. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    private record Run(int exit, String out, String err) {}

    @TempDir
    Path home;

    private Path root;
    private Path jdk;
    private final Map<String, String> environment = new HashMap<>();

    @BeforeEach
    void layOut() throws IOException {
        root = Files.createDirectories(home.resolve("a folder with spaces"));
        Path launcher = Files.copy(Path.of(System.getProperty("treen.root")).resolve("treen"), root.resolve("treen"));
        executable(launcher);
        jdk = java("jdk-25", "25.0.9");
        write(root.resolve("pom.xml"), "");
        write(root.resolve("compiler/src/main/java/Some.java"), "");
        write(root.resolve("lsp/target/treen.jar"), "");
        write(root.resolve("mvnw"),
                "echo 'maven was here'; echo \"$@\" >maven-arguments; touch lsp/target/treen.jar\n");
        environment.put("HOME", home.toString());
        environment.put("PATH", "/usr/bin:/bin");
        environment.put("JAVA_HOME", jdk.toString());
        environment.put("TREEN_JAVA_PLACES", "");
        environment.put("TREEN_START_CACHE", "no");
    }

    @Test
    void handsOverTheArgumentsAsTheyAre() throws Exception {
        Run run = treen("build", "a file", "$x", "");
        assertThat(run.exit()).isEqualTo(7);
        assertThat(run.out()).endsWith("treen.jar|build|a file|$x||\n").contains("|-XX:TieredStopAtLevel=1|");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void givesTheServerTheBetterCompiler() throws Exception {
        assertThat(treen("lsp").out()).endsWith("treen.jar|lsp|\n").doesNotContain("TieredStopAtLevel");
    }

    @Test
    void worksThroughLinks() throws Exception {
        Path bin = Files.createDirectories(home.resolve("bin"));
        Files.createSymbolicLink(bin.resolve("first"), Path.of("../a folder with spaces/treen"));
        Files.createSymbolicLink(bin.resolve("treen"), bin.resolve("first"));
        environment.put("PATH", bin + ":/usr/bin:/bin");
        assertThat(start(List.of("sh", "-c", "cd / && treen x")).out()).contains(root + "/lsp/target/treen.jar|x|");
    }

    @Test
    void looksForJavaOnThePathAndInTheUsualPlaces() throws Exception {
        environment.remove("JAVA_HOME");
        Path bin = Files.createDirectories(home.resolve("bin"));
        Files.createSymbolicLink(bin.resolve("java"), jdk.resolve("bin/java"));
        environment.put("PATH", bin + ":/usr/bin:/bin");
        assertThat(treen("x").exit()).isEqualTo(7);

        environment.put("PATH", "/usr/bin:/bin");
        environment.put("TREEN_JAVA_PLACES", home + "/jdk-*");
        java("jdk-17", "17.0.1");
        assertThat(treen("x").exit()).isEqualTo(7);
    }

    @Test
    void saysWhatToInstallWhenEveryJavaIsTooOld() throws Exception {
        environment.put("JAVA_HOME", java("jdk-21", "21.0.2").toString());
        // Whatever Java this machine has on its path must not help.
        environment.put("PATH", onlyTools());
        Run run = treen("x");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("needs Java 25 or newer", "21.0.2 in " + home, "Install a JDK 25", "JAVA_HOME");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void buildsAMissingJarAndKeepsStandardOutputClean() throws Exception {
        Files.delete(root.resolve("lsp/target/treen.jar"));
        Run run = treen("lsp");
        assertThat(run.exit()).isEqualTo(7);
        assertThat(run.err()).startsWith("treen: building Treen first").contains("maven was here");
        assertThat(run.out()).hasLineCount(1).contains("|lsp|");
        assertThat(root.resolve("maven-arguments")).content(UTF_8).contains("-Dquick", "package");
        assertThat(root.resolve("lsp/target/building")).doesNotExist();
    }

    @Test
    void buildsWhenASourceIsNewerAndOnlyThen() throws Exception {
        assertThat(treen("x").err()).isEmpty();
        Files.setLastModifiedTime(root.resolve("compiler/src/main/java/Some.java"),
                FileTime.from(Instant.now().plus(Duration.ofMinutes(1))));
        assertThat(treen("x").err()).contains("building Treen first");
    }

    @Test
    void saysSoWhenTheBuildFails() throws Exception {
        write(root.resolve("mvnw"), "exit 1\n");
        Files.delete(root.resolve("lsp/target/treen.jar"));
        Run run = treen("x");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("the build failed");
        assertThat(root.resolve("lsp/target/building")).doesNotExist();
    }

    @Test
    void makesItsStartCacheOnceAndUsesItFromThenOn() throws Exception {
        environment.remove("TREEN_START_CACHE");
        assertThat(treen("x").out()).doesNotContain("AOTCache");
        Path cache = root.resolve("lsp/target/start-25.0.9-Makers_joint.aot");
        for (int i = 0; i < 200 && !Files.exists(cache); i++) {
            Thread.sleep(25);
        }
        assertThat(treen("x").out()).contains("|-XX:AOTCache=" + cache + "|");

        Files.setLastModifiedTime(root.resolve("lsp/target/treen.jar"),
                FileTime.from(Instant.now().plus(Duration.ofMinutes(1))));
        assertThat(treen("x").out()).as("a cache older than the jar").doesNotContain("AOTCache=");
    }

    @Test
    void runsAllTheSameWhenTheCacheCannotBeMade() throws Exception {
        environment.remove("TREEN_START_CACHE");
        write(jdk.resolve("release"), "JAVA_VERSION=\"25.0.9\"\n");
        write(root.resolve("lsp/target/start-25.0.9.aot.making"), "in the way");
        for (int i = 0; i < 2; i++) {
            Run run = treen("x");
            assertThat(run.exit()).isEqualTo(7);
            assertThat(run.err()).isEmpty();
        }
    }

    /** A folder with the few programs the launcher may call, and no Java. */
    private String onlyTools() throws IOException {
        Path tools = Files.createDirectories(home.resolve("tools"));
        for (String each : List.of("find", "readlink", "sed", "cat", "mkdir")) {
            executable(write(tools.resolve(each), "#!/bin/sh\nPATH=/usr/bin:/bin exec " + each + " \"$@\"\n"));
        }
        return tools.toString();
    }

    /** A Java that prints its arguments, each ended by a bar, and exits with 7; it makes a cache when asked to. */
    private Path java(String folder, String version) throws IOException {
        Path java = home.resolve(folder);
        write(java.resolve("release"),
                "IMPLEMENTOR=\"Somebody\"\nIMPLEMENTOR_VERSION=\"Makers joint\"\nJAVA_VERSION=\"" + version + "\"\n");
        Path program = write(java.resolve("bin/java"), """
                #!/bin/sh
                for each; do
                    case $each in -XX:AOTCacheOutput=*) echo made >"${each#*=}"; exit 0 ;; esac
                    printf '%s|' "$each"
                done
                echo
                exit 7
                """);
        executable(program);
        return java;
    }

    private Run treen(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of("/bin/sh", root.resolve("treen").toString()));
        command.addAll(List.of(arguments));
        return start(command);
    }

    private Run start(List<String> command) throws Exception {
        Path out = home.resolve("out.txt");
        Path err = home.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    private static Path write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static void executable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
}

package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.plan.Projects;
import dev.treen.yield.Progress;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of a build while it lasts. */
class CourseTest {
    private static final long MILLION = 1_000_000;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    private long now;

    @TempDir
    private Path folder = Path.of("");

    /** Stops when the step begins that is called so; hears everything. */
    private static final class Stopping implements Course {
        private final String at;
        private final List<String> heard = new ArrayList<>();
        private boolean stopped;

        private Stopping(String at) {
            this.at = at;
        }

        @Override
        public void begins(String step) {
            heard.add(step);
            stopped |= step.equals(at);
        }

        @Override
        public void stands(Progress.Report report) {
            assertThat(Course.percent(report)).isBetween(0, 100);
            assertThat(Course.said(report)).isNotBlank();
        }

        @Override
        public boolean isStopped() {
            return stopped;
        }

        @Override
        public void ends() {
            heard.add("ends");
        }
    }

    private int build(Path project, Course course) {
        out.reset();
        return Main.build(List.of(project.toString(), "--paper", "none"),
                new Subcommand.Streams(InputStream.nullInputStream(), to, to), course);
    }

    @Test
    void aBuildThatIsStoppedAnywhereWritesNothing() throws Exception {
        Path project = folder.resolve("caddy.treen");
        Files.writeString(project, Projects.text("tea-caddy"));
        Path plan = folder.resolve("caddy-plan");
        Stopping never = new Stopping("");
        assertThat(build(project, never)).isZero();
        assertThat(plan.resolve("plan.html")).exists();
        List<String> steps = List.copyOf(never.heard);
        assertThat(steps).hasSizeGreaterThan(4).endsWith("ends").doesNotHaveDuplicates();
        Path other = Files.move(project, folder.resolve("other.treen"));
        for (String step : steps.subList(0, steps.size() - 1)) {
            Stopping course = new Stopping(step);
            assertThat(build(other, course)).as(step).isEqualTo(1);
            assertThat(course.heard).as(step).endsWith("ends");
            assertThat(out.toString(StandardCharsets.UTF_8)).contains("Nothing was written");
            assertThat(folder.resolve("other-plan")).as(step).doesNotExist();
        }
    }

    @Test
    void theTerminalHasOneLineThatGoesAway() {
        TerminalCourse course = new TerminalCourse(to, () -> now * MILLION);
        course.begins("checking the project");
        now = 500;
        course.stands(new Progress.Report(3, 10, 7, 5, 2, true));
        now = 510;
        course.stands(new Progress.Report(3, 10, 7, 5, 1, true));
        now = 700;
        course.stands(new Progress.Report(5, 10, 100, 93, 0, true));
        course.begins("drawing the parts");
        course.ends();
        course.ends();
        assertThat(out.toString(StandardCharsets.UTF_8).split("\r\033\\[K", -1)).containsExactly(
                "",
                "checking the project",
                "laying out boards [######..............] 2 parts have no place yet",
                "laying out boards [##########..........] within 8 % of the best possible",
                "drawing the parts",
                "");
    }
}

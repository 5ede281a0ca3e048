package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dev.treen.cli.Subcommand;
import java.time.Duration;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;

class LspCommandTest {

    @Test
    void isFoundByTheCommand() {
        assertThat(ServiceLoader.load(Subcommand.class)).extracting(Subcommand::name).contains("lsp");
    }

    @Test
    void warmsUpAndIsDone() {
        assertTimeoutPreemptively(Duration.ofSeconds(9), () -> new LspCommand().warmUp(), "a warm-up without answers");
    }
}

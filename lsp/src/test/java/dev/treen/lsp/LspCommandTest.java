package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.cli.Subcommand;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;

class LspCommandTest {

    @Test
    void isFoundByTheCommand() {
        assertThat(ServiceLoader.load(Subcommand.class)).extracting(Subcommand::name).contains("lsp");
    }
}

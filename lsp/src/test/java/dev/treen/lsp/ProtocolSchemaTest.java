package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The judge of the messages is not blind. */
class ProtocolSchemaTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "textDocument/hover | result | null | true",
            "textDocument/hover | result | {\"contents\":\"oak\"} | true",
            "textDocument/hover | result | {\"content\":\"oak\"} | false",
            "textDocument/hover | params | {\"textDocument\":{\"uri\":\"a\"},\"position\":{\"line\":0,\"character\":1}} | true",
            "textDocument/hover | params | {\"textDocument\":{\"uri\":\"a\"},\"position\":{\"line\":0}} | false",
            "shutdown | result | {} | false",
            "shutdown | result | null | true",
            "$/progress | params | {\"token\":1,\"value\":{\"kind\":\"end\"}} | true",
            "$/progress | params | {\"token\":1,\"value\":{\"kind\":\"ended\"}} | false",
            "textDocument/hoover | params | {} | false"})
    void tellsGoodFromBad(String method, String part, String json, boolean good) throws Exception {
        assertThat(ProtocolSchema.breaches(method, part, new ObjectMapper().readTree(json)).isEmpty()).isEqualTo(good);
    }
}

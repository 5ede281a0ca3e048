package dev.treen.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** What is to be bought, and what it costs, as one field of the plan. */
final class CostJson {
    private CostJson() {
    }

    static void write(Costs costs, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("shopping");
        json.writeStringField("currency", costs.currency());
        json.writeArrayFieldStart("lines");
        for (Board board : costs.boards()) {
            line(json, board.sheet() ? "sheet" : "board", Woods.name(board), board.name());
            amount(json, 1, 1, "", false);
            sum(json, "cost", Costs.of(board));
            json.writeEndObject();
        }
        for (Supplies.Supply supply : costs.supplies()) {
            line(json, supply.group().name().toLowerCase(Locale.ROOT), supply.what(), supply.name());
            amount(json, supply.least(), supply.most(), supply.unit(), supply.either());
            sum(json, "cost", Costs.of(supply));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("priced", costs.priced());
        json.writeNumberField("counted", costs.lines());
        sum(json, "together", costs.any() ? Optional.of(costs.together()) : Optional.empty());
        json.writeEndObject();
    }

    private static void line(JsonGenerator json, String group, String what, String name) throws IOException {
        json.writeStartObject();
        json.writeStringField("group", group);
        json.writeStringField("what", what);
        json.writeStringField("name", name);
    }

    private static void amount(JsonGenerator json, long least, long most, String unit, boolean either)
            throws IOException {
        json.writeObjectFieldStart("amount");
        json.writeNumberField("least", least);
        json.writeNumberField("most", most);
        json.writeEndObject();
        json.writeStringField("unit", unit.isEmpty() ? "piece" : unit);
        json.writeBooleanField("either", either);
    }

    private static void sum(JsonGenerator json, String name, Optional<Costs.Sum> sum) throws IOException {
        if (sum.isPresent()) {
            json.writeObjectFieldStart(name);
            json.writeNumberField("least", sum.get().least());
            json.writeNumberField("most", sum.get().most());
            json.writeEndObject();
        }
    }
}

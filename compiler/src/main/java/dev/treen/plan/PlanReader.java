package dev.treen.plan;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.treen.cutting.EarlierLayout;
import dev.treen.cutting.Rectangle;
import dev.treen.quantity.Length;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the layout out of a plan that {@link PlanJson} wrote. */
public final class PlanReader {
    private static final BigDecimal LONGEST = BigDecimal.valueOf(1_000_000);

    private PlanReader() {
    }

    /** The layout in {@code plan}; none where the text is no plan of this version. */
    public static EarlierLayout layout(String plan) {
        try (JsonParser parser = new JsonFactory().createParser(plan)) {
            parser.nextToken();
            Node root = value(parser);
            if (root.number("version").intValue() != PlanJson.VERSION) {
                return EarlierLayout.NONE;
            }
            return new EarlierLayout(root.at("layout").list("boards").stream().map(PlanReader::board).toList());
        } catch (IOException | Unreadable broken) {
            return EarlierLayout.NONE;
        }
    }

    private static EarlierLayout.Board board(Node board) {
        Map<String, Rectangle> parts = new LinkedHashMap<>();
        board.list("parts").forEach(part -> parts.put(part.text("part"), area(part)));
        return new EarlierLayout.Board(
                board.text("board"),
                board.number("leaf").intValue(),
                board.number("leaves").intValue(),
                parts,
                board.list("cuts").stream().map(PlanReader::cut).toList(),
                board.list("offcuts").stream().map(PlanReader::area).toList());
    }

    private static EarlierLayout.SawCut cut(Node cut) {
        return new EarlierLayout.SawCut(
                cut.text("way").equals("along"), cut.length("at"), cut.length("kerf"), area(cut.at("through")));
    }

    private static Rectangle area(Node area) {
        return new Rectangle(area.length("x"), area.length("y"), area.length("length"), area.length("width"));
    }

    private static Node value(JsonParser parser) throws IOException {
        Map<String, Node> fields = new LinkedHashMap<>();
        List<Node> items = new ArrayList<>();
        String text = "";
        switch (parser.currentToken()) {
            case START_OBJECT -> {
                while (parser.nextToken() == JsonToken.FIELD_NAME) {
                    String name = parser.currentName();
                    parser.nextToken();
                    fields.put(name, value(parser));
                }
            }
            case START_ARRAY -> {
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(parser));
                }
            }
            case null -> throw new Unreadable();
            default -> text = parser.getText();
        }
        return new Node(fields, items, text);
    }

    /** What was read is no plan of ours. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private record Node(Map<String, Node> fields, List<Node> items, String text) {
        Node at(String name) {
            Node node = fields.get(name);
            if (node == null) {
                throw new Unreadable();
            }
            return node;
        }

        List<Node> list(String name) {
            return at(name).items();
        }

        String text(String name) {
            return at(name).text();
        }

        BigDecimal number(String name) {
            try {
                BigDecimal number = new BigDecimal(text(name));
                if (number.abs().compareTo(LONGEST) > 0 || number.scale() > 3) {
                    throw new Unreadable();
                }
                return number;
            } catch (NumberFormatException words) {
                throw new Unreadable();
            }
        }

        Length length(String name) {
            return Length.ofMm(BigFraction.of(number(name).movePointRight(3).toBigInteger()).divide(1000));
        }
    }
}

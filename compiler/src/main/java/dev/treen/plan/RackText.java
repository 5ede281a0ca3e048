package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.cutting.Rectangle;
import dev.treen.model.Board;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import java.util.HashSet;
import java.util.Set;

/**
 * The offcuts of a layout as boards of a file of their own, which the next project can take up with {@code use}. They lie
 * clear of all flaws; sizes are rounded down to a tenth of a millimetre.
 */
public final class RackText {
    private final StringBuilder out = new StringBuilder();
    private final Set<String> names = new HashSet<>();

    private RackText() {
    }

    /** The file's text, or nothing where no offcut is worth keeping. */
    public static String of(Plan plan) {
        Cutting cutting = plan.cutting();
        if (cutting.boards().stream().allMatch(board -> board.offcuts().isEmpty())) {
            return "";
        }
        var rack = new RackText();
        rack.out.append("""
                // What is left over. Another project takes it up with `use` and the path of this file, and uses it up
                // first with `layout { offcuts first }` in its project block.
                """);
        for (BoardCut board : cutting.boards()) {
            board.offcuts().forEach(offcut -> rack.offcut(board, offcut));
        }
        return rack.out.toString();
    }

    private void offcut(BoardCut cut, Rectangle area) {
        Board board = cut.board();
        out.append('\n').append(board.sheet() ? "sheet " : "board ").append(fresh(board.name())).append(" {\n");
        board.species().ifPresent(species -> line("species", species));
        line("size", mm(area.length()) + " x " + mm(area.width()) + " x " + mm(cut.thickness()));
        if (!board.sheet()) {
            if (!board.rings().assumed()) {
                line("rings", board.rings().word());
            }
            board.moisture().ifPresent(moisture -> line("moisture", DecimalText.write(moisture, 2) + "%"));
        }
        line("offcut", "yes");
        out.append("}\n");
    }

    private void line(String name, String value) {
        out.append("  ").append(name).append(" ".repeat(Math.max(1, 10 - name.length()))).append(value).append('\n');
    }

    private static String mm(Length length) {
        return DecimalText.write(Math.floor(length.toDoubleMm() * 10 + 1e-6) / 10, 1) + "mm";
    }

    private String fresh(String board) {
        String plain = board.replaceAll("[^A-Za-z0-9_]+", "_").replaceAll("_+$", "");
        for (int i = 1;; i++) {
            String name = plain + "_offcut_" + i;
            if (names.add(name)) {
                return name;
            }
        }
    }
}

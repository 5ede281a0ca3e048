package dev.treen.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The manufactured panels the data file holds. */
public final class SheetGoods {

    private SheetGoods() {
    }

    /** The panel of exactly this name. */
    public static Optional<SheetGood> get(String id) {
        return all().stream().filter(sheet -> sheet.id().equals(id)).findFirst();
    }

    /** All panels, in the order of the file. */
    public static List<SheetGood> all() {
        return Published.SHEETS;
    }

    private static final class Published {
        static final List<SheetGood> SHEETS = read();

        private static List<SheetGood> read() {
            List<SheetGood> sheets = new ArrayList<>();
            for (Csv.Row row : Csv.load("sheet_goods.csv").rows()) {
                sheets.add(SheetGood.of(row));
            }
            return List.copyOf(sheets);
        }
    }
}

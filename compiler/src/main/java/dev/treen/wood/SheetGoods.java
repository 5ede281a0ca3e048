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

    /** What else parts are bought of, which is neither wood nor a sheet of it: glass, metal. */
    public static List<SheetGood> foreign() {
        return Published.FOREIGN;
    }

    /** That of exactly this name. */
    public static Optional<SheetGood> foreign(String id) {
        return foreign().stream().filter(stuff -> stuff.id().equals(id)).findFirst();
    }

    private static final class Published {
        static final List<SheetGood> FOREIGN = read("bought_stuff.csv");
        static final List<SheetGood> SHEETS = read("sheet_goods.csv");

        private static List<SheetGood> read(String file) {
            List<SheetGood> sheets = new ArrayList<>();
            for (Csv.Row row : Csv.load(file).rows()) {
                sheets.add(SheetGood.of(row));
            }
            return List.copyOf(sheets);
        }
    }
}

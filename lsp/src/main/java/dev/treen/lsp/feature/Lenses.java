package dev.treen.lsp.feature;

import dev.treen.check.RoomYear;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.cutting.Rectangle;
import dev.treen.lsp.Document;
import dev.treen.model.Board;
import dev.treen.model.Instance;
import dev.treen.model.Part;
import dev.treen.plan.YearText;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.Command;

/**
 * Lines above what they tell of: the plan to be built above the project, what a board yields above the board, and the
 * room of a panel, door or lid through the year above its part, or above what a pattern makes it for.
 */
public final class Lenses {
    /** Makes the lenses. */
    public Lenses() {
    }

    /** The lenses of a document; those of boards once their layout is known. */
    public List<CodeLens> of(Document document, Optional<Cutting> layout) {
        List<CodeLens> lenses = new ArrayList<>();
        document.analysis().tree().statements().stream()
                .filter(Statement.Project.class::isInstance)
                .findFirst()
                .ifPresent(project -> add(document, project.span(), lenses, new Command(
                        "Build the plan", Commands.BUILD, List.of(document.uri()))));
        LengthFormat format = document.analysis().evaluation().project().settings().format();
        layout.ifPresent(cutting -> document.analysis().evaluation().project().boards()
                .forEach(board -> add(document, board.nameAt(), lenses, ofBoard(document, board, cutting, format))));
        rooms(document, format, lenses);
        return lenses;
    }

    /** The room above each part; of the parts of what a pattern makes the tightest, above its name. */
    private static void rooms(Document document, LengthFormat format, List<CodeLens> lenses) {
        Makers makers = new Makers(document);
        Map<Span, RoomYear> tightest = new LinkedHashMap<>();
        Map<Span, Integer> counts = new HashMap<>();
        for (RoomYear year : document.analysis().quick().facts().years()) {
            Optional<Instance> maker = makers.of(year.part());
            if (maker.isPresent()) {
                counts.merge(maker.get().usedAt(), 1, Integer::sum);
                tightest.merge(maker.get().usedAt(), year,
                        (one, other) -> one.tightest().mm() <= other.tightest().mm() ? one : other);
                continue;
            }
            document.analysis().joined().part(year.part())
                    .map(part -> part.part())
                    .map(Part::nameAt)
                    .ifPresent(at -> add(document, at, lenses, new Command(
                            "room on each side " + YearText.hint(year, format), "")));
        }
        tightest.forEach((at, year) -> add(document, at, lenses, new Command(
                (counts.getOrDefault(at, 1) > 1 ? "least room on each side, of " : "room on each side of ")
                        + year.part() + ", " + YearText.hint(year, format),
                "")));
    }

    private static Command ofBoard(Document document, Board board, Cutting cutting, LengthFormat format) {
        List<BoardCut> cuts = cutting.boards().stream()
                .filter(cut -> cut.board().name().equals(board.name()))
                .toList();
        if (cuts.isEmpty()) {
            return new Command("not needed", "");
        }
        int parts = cuts.stream().mapToInt(cut -> cut.parts().size()).sum();
        double used = cuts.stream().flatMap(cut -> cut.parts().stream()).mapToDouble(on -> area(on.area())).sum();
        double whole = cuts.size() * board.length().value().toDoubleMm() * board.width().value().toDoubleMm();
        String offcut = cuts.stream().flatMap(cut -> cut.offcuts().stream())
                .max(Comparator.comparingDouble(Lenses::area))
                .map(left -> "; largest offcut " + format.figure(left.length()) + " x " + format.figure(left.width()))
                .orElse("");
        String how = cutting.proved()
                ? "; proved best"
                : "; " + Cutting.within(cutting.gap());
        String title = parts + (parts == 1 ? " part, " : " parts, ") + DecimalText.write(100 * used / whole, 0)
                + " % of it" + (cuts.size() > 1 ? " in " + cuts.size() + " leaves" : "") + offcut + how;
        return new Command(title, Commands.LAYOUT, List.of(document.uri(), board.name()));
    }

    private static double area(Rectangle rectangle) {
        return rectangle.length().toDoubleMm() * rectangle.width().toDoubleMm();
    }

    private static void add(Document document, Span at, List<CodeLens> lenses, Command command) {
        if (at.file().equals(document.file())) {
            CodeLens lens = new CodeLens(document.positions().range(at.start(), at.end()));
            lens.setCommand(command);
            lenses.add(lens);
        }
    }
}

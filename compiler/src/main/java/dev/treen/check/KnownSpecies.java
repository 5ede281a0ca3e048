package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.wood.SheetGood;
import dev.treen.wood.SheetGoods;
import dev.treen.wood.SpeciesTable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Whether the species that boards name are in the published tables. */
final class KnownSpecies implements Check {
    static final FindingKind UNKNOWN_SPECIES = FindingKind.error("unknown-species",
            "A species is not in the published tables");

    @Override
    public List<FindingKind> kinds() {
        return List.of(UNKNOWN_SPECIES);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        for (Board board : named(joined)) {
            if (board.species().isPresent() && !board.sheet() && board.declared().isEmpty()) {
                String name = board.species().get();
                switch (SpeciesTable.published().find(name)) {
                    case SpeciesTable.Lookup.Found found -> {
                        if (SpeciesTable.published().get(name).isEmpty()) {
                            findings.add(finding(board, name, List.of(found.species().id())));
                        }
                    }
                    case SpeciesTable.Lookup.Candidates many -> findings.add(finding(board, name, many.candidates()));
                    case SpeciesTable.Lookup.Unknown unknown -> findings.add(finding(board, name, unknown.near()));
                }
            }
        }
        return findings;
    }

    /** All that names what it is of: boards, and parts that are bought. */
    private static List<Board> named(Joined joined) {
        return Stream.concat(joined.project().boards().stream(),
                joined.parts().stream().flatMap(part -> part.part().bought().stream())).toList();
    }

    private static Finding finding(Board board, String name, List<String> near) {
        Finding.Builder finding = Finding.of(
                UNKNOWN_SPECIES, board.speciesAt(), "No species of the tables is called `" + name + "`")
                .because("How much wood moves is taken from the tables of the Wood Handbook, by species.")
                .about(board.name());
        List<String> stuffs = NearWords.of(name, SheetGoods.foreign().stream().map(SheetGood::id).toList());
        List<String> offered = Stream.concat(stuffs.stream(), near.stream()).limit(3).toList();
        if (!offered.isEmpty()) {
            finding.found("Near are `" + String.join("`, `", offered) + "`.");
        }
        for (String each : offered) {
            Edit edit = new Edit(board.speciesAt(), each);
            finding.remedy(
                    offered.size() == 1
                            ? Remedy.safe("write `" + each + "`", edit)
                            : Remedy.choice("write `" + each + "`", edit));
        }
        return finding.build();
    }
}

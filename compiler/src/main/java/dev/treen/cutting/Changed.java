package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.GlueUp;
import dev.treen.model.Part;
import dev.treen.model.Takes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The boards with one part changed, to try whether it would have room then. */
final class Changed {
    private final Joined joined;
    private final Wished wished;
    private final Rack rack;

    Changed(Joined joined, Wished wished, Rack rack) {
        this.joined = joined;
        this.wished = wished;
        this.rack = rack;
    }

    /** Where the part may have a flaw of a kind in it. */
    Rack taking(FinishedPart part, String kind) {
        List<Takes.Taken> flaws = new ArrayList<>(part.part().takes().flaws());
        flaws.add(new Takes.Taken(kind, Optional.empty(), part.part().nameAt()));
        Joined other = with(part, part.part().taking(new Takes(flaws)));
        return new Rack(other, wished, new Blemishing(other), rack.division());
    }

    /** Where the part is glued up from staves. */
    Rack glued(FinishedPart part) {
        String name = part.part().name();
        GlueUp plain = new GlueUp(
                Optional.empty(), Optional.empty(), GlueUp.Order.ALTERNATE, GlueUp.Match.NONE, part.part().nameAt());
        Joined other = with(part, part.part().gluedUp(plain));
        Map<String, Glued> glued = new HashMap<>(rack.division().glued());
        new StaveChoices(other, EarlierLayout.NONE, java.util.Set.of()).all().stream()
                .map(List::getFirst)
                .filter(option -> option.containsKey(name))
                .forEach(option -> Optional.ofNullable(option.get(name)).ifPresent(each -> glued.put(name, each)));
        return new Rack(other, wished, new Blemishing(other), new Division(rack.division().leaves(), glued));
    }

    private Joined with(FinishedPart part, Part changed) {
        List<FinishedPart> parts = joined.made().stream()
                .map(each -> !each.part().is(part.part()) ? each : new FinishedPart(
                        changed, part.length(), part.width(), part.thickness(), part.roughLength(), part.roughWidth(),
                        part.roughThickness(), part.shape()))
                .toList();
        return new Joined(
                joined.project(), parts, joined.joints(), joined.findings(), joined.natures(), joined.subassemblies());
    }
}

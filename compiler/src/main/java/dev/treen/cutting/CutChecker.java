package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.AnyOf;
import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.model.GlueUp;
import dev.treen.model.LayoutWishes;
import dev.treen.model.Part;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Checks what becomes of boards against the rules, from the project's own figures: every part is there once, whole or in all
 * its staves; staves add up and are as wide and as many as was asked, and have no flaw in them that their part does not take;
 * only on sheets do parts lie across; what is resawn is thick enough; pieces of a ripped board lie between its rips. It shares
 * nothing with what chose the layout; the solver's own rectangles have a check of their own.
 */
final class CutChecker {
    /** Round flaws are compared in millimetres that are no longer exact. */
    private static final double ROUNDED = 0.01;

    private final Joined joined;
    private final List<String> breaches = new ArrayList<>();
    private final Map<Blank.Member, BoardCut> places = new HashMap<>();
    private final Map<Blank.Member, Blank> blanks = new HashMap<>();
    private final Map<String, FinishedPart> parts = new HashMap<>();
    private final Set<String> made = new HashSet<>();
    private final Map<String, Glued> glued = new HashMap<>();
    private final Set<String> unplaced;

    private CutChecker(Joined joined, Cutting cutting) {
        this.joined = joined;
        joined.made().forEach(part -> parts.put(part.part().name(), part));
        this.unplaced = new HashSet<>();
        cutting.unplaced().forEach(name -> unplaced.addAll(List.of(name.split(" \\+ ", -1))));
    }

    /** What is wrong with a layout; nothing where it is right. */
    static List<String> check(Joined joined, Cutting cutting) {
        var checker = new CutChecker(joined, cutting);
        cutting.glued().forEach(each -> checker.glued.put(each.part(), each));
        joined.project().measurements().forEach(each -> checker.made.addAll(each.made()));
        cutting.boards().forEach(checker::board);
        for (FinishedPart part : joined.made()) {
            Optional<Glued> staves = Optional.ofNullable(checker.glued.get(part.part().name()));
            if (part.part().glueUp().isPresent() != staves.isPresent()) {
                checker.breach("staves of", part.part().name());
            } else if (staves.isPresent()) {
                checker.glued(part, staves.get());
            } else {
                checker.there(new Blank.Member(part.part().name(), 0));
            }
        }
        joined.project().settings().layout().bookmatched().forEach(checker::pair);
        return List.copyOf(checker.breaches);
    }

    private void breach(String what, String where) {
        breaches.add(what + " `" + where + "`");
    }

    private void board(BoardCut cut) {
        Length flat = flat(cut);
        if (cut.leaf() < 1 || cut.leaf() > cut.leaves() || cut.thickness().compareTo(flat) > 0) {
            breach("leaves of", cut.name());
        }
        boolean never = !joined.project().settings().layout().resaw() && cut.source().leaves().isEmpty();
        if (cut.source().leaves().map(asked -> asked != cut.leaves()).orElse(never && cut.leaves() > 1)) {
            breach("leaves asked of", cut.name());
        }
        if (!between(cut)) {
            breach("rips of", cut.source().name());
        }
        for (BoardCut.OnBoard piece : cut.parts()) {
            for (Blank.Member member : piece.blank().members()) {
                if (places.put(member, cut) != null) {
                    breach("twice", member.name());
                }
                blanks.put(member, piece.blank());
                if (joined.part(member.part()).filter(part -> part.part().bought().isPresent()).isPresent()) {
                    breach("bought, and cut out", member.name());
                }
                size(cut, member, piece);
                Optional.ofNullable(parts.get(member.part()))
                        .filter(part -> !wished(part.part(), cut.source()))
                        .ifPresent(part -> breach("from another board", member.name()));
            }
            thick(cut, piece.blank());
            if (!piece.blank().plain()) {
                cut.board().defects().forEach(flaw -> flawIn(flaw, piece));
            }
        }
    }

    /** A species is held against the word that the board itself has. */
    private static boolean wished(Part part, Board source) {
        return part.anyOf().isPresent()
                ? source.species().equals(part.anyOf().map(AnyOf::species))
                : part.from().map(from -> from.name().equals(source.name())).orElse(true);
    }

    /**
     * What is glued up or resawn has a flaw in it only where its part takes that kind on either face, for it may come to lie
     * either way; a knot keeps off both edges by what the plane takes there. Leaves of a book have none.
     */
    private void flawIn(Defect flaw, BoardCut.OnBoard piece) {
        if (!reaches(flaw, piece.area())) {
            return;
        }
        boolean taken = piece.blank().members().size() == 1 && piece.blank().parts().stream()
                .flatMap(name -> Optional.ofNullable(parts.get(name)).stream())
                .allMatch(part -> part.part().takes().flaws().stream()
                        .anyMatch(each -> each.kind().equals(flaw.kind()) && each.on().isEmpty()));
        if (!taken || (flaw instanceof Defect.Disc knot && flaw.kind().equals("knot") && !amid(knot, piece))) {
            breach("a " + flaw.kind() + " in", piece.name());
        }
    }

    private static boolean reaches(Defect flaw, Rectangle area) {
        return switch (flaw) {
            case Defect.Disc d -> {
                double x = off(d.x(), area.x(), area.length());
                double y = off(d.y(), area.y(), area.width());
                yield Math.hypot(x, y) < d.radius().toDoubleMm() - ROUNDED;
            }
            case Defect.Line l -> crosses(l, area);
            case Defect.Patch p -> p.x().compareTo(area.x().plus(area.length())) < 0
                    && p.x().plus(p.length()).compareTo(area.x()) > 0
                    && p.y().compareTo(area.y().plus(area.width())) < 0
                    && p.y().plus(p.width()).compareTo(area.y()) > 0;
        };
    }

    /** How far a place lies outside a stretch. */
    private static double off(Length at, Length from, Length size) {
        return Math.max(0, Math.max(
                from.minus(at).toDoubleMm(), at.minus(from).minus(size).toDoubleMm()));
    }

    /** Whether any of a straight flaw lies inside, wherever its ends are: what is left of it between both pairs of sides. */
    private static boolean crosses(Defect.Line line, Rectangle area) {
        double[] start = {line.x1().toDoubleMm(), line.y1().toDoubleMm()};
        double[] way = {line.x2().minus(line.x1()).toDoubleMm(), line.y2().minus(line.y1()).toDoubleMm()};
        double[] least = {area.x().toDoubleMm(), area.y().toDoubleMm()};
        double[] size = {area.length().toDoubleMm(), area.width().toDoubleMm()};
        double from = 0;
        double to = 1;
        for (int i = 0; i < start.length; i++) {
            double low = least[i] + ROUNDED - start[i];
            double high = least[i] + size[i] - ROUNDED - start[i];
            if (way[i] == 0 && (low > 0 || high < 0)) {
                return false;
            }
            if (way[i] != 0) {
                from = Math.max(from, Math.min(low / way[i], high / way[i]));
                to = Math.min(to, Math.max(low / way[i], high / way[i]));
            }
        }
        return from < to;
    }

    private boolean amid(Defect.Disc knot, BoardCut.OnBoard piece) {
        FinishedPart part = parts.get(piece.blank().parts().getFirst());
        Length keep = knot.radius().plus(part == null ? Length.ZERO : part.part().allow().planing().value());
        return knot.y().minus(piece.area().y()).compareTo(keep) >= 0
                && piece.area().y().plus(piece.area().width()).minus(knot.y()).compareTo(keep) >= 0;
    }

    /** What a leaf gives once it is flat (rules of the trade A-04), without the hollow of a piece so wide. */
    private static Length flat(BoardCut cut) {
        Board source = cut.source();
        Length thick = source.thickness().value();
        if (source.sheet()) {
            return thick;
        }
        Length share = Length.ofMm(cut.board().width().value().ratioTo(source.width().value()));
        Length cup = source.cup().map(c -> c.value().times(share.mm()).times(share.mm())).orElse(Length.ZERO);
        Length all = thick.minus(cup).minus(source.allow().planing().value()).minus(source.allow().planing().value());
        for (int i = 1; i < cut.leaves(); i++) {
            all = all.minus(source.allow().kerf().value()).minus(source.allow().resaw().value().times(2));
        }
        return all.dividedBy(cut.leaves());
    }

    /** Whether the board that is laid out is one of the stretches between two rips, a kerf apart. */
    private static boolean between(BoardCut cut) {
        Board source = cut.source();
        Length kerf = source.allow().kerf().value();
        Length from = Length.ZERO;
        for (int i = 0; i < source.rips().size(); i++) {
            Length to = source.rips().get(i).value();
            if (cut.board().name().endsWith(" piece " + (i + 1))) {
                return cut.board().width().value().equals(to.minus(from));
            }
            from = to.plus(kerf);
        }
        return cut.board().width().value().equals(source.width().value().minus(from));
    }

    private void size(BoardCut cut, Blank.Member member, BoardCut.OnBoard piece) {
        FinishedPart part = parts.get(member.part());
        if (part == null) {
            breach("unknown", member.part());
            return;
        }
        boolean whole = member.stave() == 0;
        Length along = part.roughLength().value();
        Length wide = whole ? part.roughWidth().value()
                : Optional.ofNullable(glued.get(member.part()))
                        .filter(each -> member.stave() <= each.staves().size())
                        .map(each -> each.staves().get(member.stave() - 1)
                                .plus(part.part().allow().planing().value().times(2)))
                        .orElse(Length.ZERO);
        // A part that was cut at another size stays as it was cut.
        boolean turned = whole && piece.lay().equals(BoardCut.OnBoard.ACROSS);
        if (turned && !part.part().turnsOn(cut.source())) {
            breach("grain of", member.name());
        }
        boolean less = piece.area().length().compareTo(turned ? wide : along) < 0
                || piece.area().width().compareTo(turned ? along : wide) < 0;
        if (wide.signum() <= 0 || (less && !made.contains(member.part()))) {
            breach("size of", member.name());
        }
    }

    private void thick(BoardCut cut, Blank blank) {
        Length needed = Length.ZERO;
        Length thickest = Length.ZERO;
        for (Blank.Member member : blank.members()) {
            FinishedPart part = parts.get(member.part());
            if (part == null) {
                continue;
            }
            Length again = member.stave() == 0 ? Length.ZERO : part.part().allow().planing().value().times(2);
            thickest = thickest.max(part.thickness().value().plus(again));
        }
        for (int i = 0; i < blank.members().size(); i++) {
            needed = needed.plus(thickest);
            if (i > 0) {
                needed = needed.plus(cut.source().allow().kerf().value())
                        .plus(cut.source().allow().resaw().value().times(2));
            }
        }
        if (needed.compareTo(cut.thickness()) > 0) {
            breach("thickness of", blank.name());
        }
    }

    private void there(Blank.Member member) {
        if (places.containsKey(member) == unplaced.contains(member.name())) {
            breach("neither cut nor left out, or both:", member.name());
        }
    }

    private void glued(FinishedPart part, Glued glued) {
        GlueUp asked = part.part().glueUp().orElseThrow();
        Length sum = Length.ZERO;
        for (int i = 0; i < glued.staves().size(); i++) {
            Length stave = glued.staves().get(i);
            sum = sum.plus(stave);
            boolean wide = asked.widest().filter(w -> stave.compareTo(w.value()) > 0).isPresent();
            if (stave.signum() <= 0 || (wide && asked.staves().isEmpty() && asked.match() != GlueUp.Match.BOOK)) {
                breach("width of stave " + (i + 1) + " of", glued.part());
            }
            there(new Blank.Member(glued.part(), i + 1));
        }
        boolean count = asked.staves().map(n -> n == glued.staves().size()).orElse(glued.staves().size() >= 2);
        if (!count || !sum.equals(part.roughWidth().value())) {
            breach("staves of", glued.part());
        }
        if (glued.clear() && !clear(part, glued)) {
            breach("glue lines of", glued.part());
        }
        if (asked.match() == GlueUp.Match.BOOK) {
            book(new Blank.Member(glued.part(), 1), new Blank.Member(glued.part(), 2));
        }
    }

    /**
     * Whether no glue line runs through a place that a joint touches beside untouched wood: at an end of the part, or
     * where the place is at least as long as it is wide.
     */
    private boolean clear(FinishedPart part, Glued glued) {
        Length before = part.roughWidth().value().minus(part.width().value()).dividedBy(2);
        for (Rectangle place : new JointPlaces(joined).of(part)) {
            Length low = place.y().plus(before);
            Length high = low.plus(place.width());
            boolean whole = place.width().equals(part.width().value());
            boolean inTheLength = place.x().signum() > 0
                    && place.x().plus(place.length()).compareTo(part.length().value()) < 0;
            boolean along = place.length().compareTo(place.width()) >= 0;
            if (!whole && (along || !inTheLength)
                    && glued.lines().stream().anyMatch(l -> l.compareTo(low) > 0 && l.compareTo(high) < 0)) {
                return false;
            }
        }
        return true;
    }

    private void pair(LayoutWishes.Group pair) {
        List<FinishedPart> parts = pair.parts().stream().flatMap(name -> joined.part(name).stream()).toList();
        boolean both = parts.size() == 2 && parts.stream().allMatch(part -> part.part().glueUp().isEmpty());
        boolean once = joined.project().settings().layout().bookmatched().stream()
                .filter(other -> other.parts().stream().anyMatch(pair.parts()::contains))
                .count() == 1;
        if (both && once) {
            book(new Blank.Member(pair.parts().get(0), 0), new Blank.Member(pair.parts().get(1), 0));
        }
    }

    private void book(Blank.Member one, Blank.Member other) {
        Blank blank = blanks.get(one);
        if (places.containsKey(one) != places.containsKey(other)
                || (blank != null && !blank.equals(blanks.get(other)))) {
            breach("not one book:", one.name());
        }
    }
}

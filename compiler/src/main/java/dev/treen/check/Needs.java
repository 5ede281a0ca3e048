package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Loose;
import dev.treen.joinery.Making;
import dev.treen.joinery.Nature;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.model.Joint;
import dev.treen.model.RoomClimate;
import dev.treen.wood.Climate;
import dev.treen.wood.Coefficient;
import dev.treen.wood.Coefficients;
import dev.treen.wood.Direction;
import dev.treen.wood.Figures;
import dev.treen.wood.Movement;
import dev.treen.wood.Rings;
import dev.treen.wood.Seasons;
import dev.treen.wood.Species;
import dev.treen.wood.SpeciesTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The gap that a panel, door or lid would want of other rings, another wood, or in another room. */
final class Needs {
    /** Woods of furniture to compare with, from calm to lively. */
    private static final List<String> USUAL = List.of("mahogany_true", "black_walnut", "white_oak", "american_beech");

    private static final int MOST_WOODS = 4;

    private Needs() {
    }

    static List<RoomYear.Need> of(Clearance room, Joined joined) {
        Nature nature = room.nature();
        if (nature.still() || room.measure() == 0) {
            return List.of();
        }
        List<RoomYear.Need> needs = new ArrayList<>();
        Coefficients own = nature.across().from();
        needs.add(need("as it is", room, nature.coefficient(room.measure()), nature.seasons()));
        for (Rings.Word word : List.of(Rings.Word.FLAT, Rings.Word.QUARTER)) {
            double degrees = word.degrees(Figures.standard());
            if (Math.abs(degrees - nature.across().ringDegrees()) > 1) {
                needs.add(need("with " + word.word() + " rings", room, turned(own, degrees, room), nature.seasons()));
            }
        }
        woods(room, joined).forEach((name, coefficients) -> needs.add(need(
                "of " + name, room, turned(coefficients, nature.across().ringDegrees(), room), nature.seasons())));
        rooms(room, joined).forEach((name, seasons) -> needs.add(need(
                name, room, nature.coefficient(room.measure()), seasons)));
        return needs;
    }

    private static Coefficient turned(Coefficients of, double degrees, Clearance room) {
        return Coefficient.of(
                of,
                new Rings.Angle(degrees),
                room.measure() == 2 ? Direction.THICKNESS : Direction.WIDTH,
                Figures.standard());
    }

    private static RoomYear.Need need(
            String what, Clearance room, Coefficient coefficient, Seasons seasons) {
        double making = Making.stated(room.made().joint()) ? room.worstMm() : usual(room.made().joint());
        return new RoomYear.Need(
                what, Movement.swelling(room.movesMm(), coefficient, seasons).changeMm() + making);
    }

    /** What is usually left for making, in such a joint. */
    private static double usual(Joint joint) {
        if (Loose.in(joint)) {
            return Loose.clear(joint).value();
        }
        return Figures.standard().value(joint.given("slide").isPresent() ? "lid.side" : "panel.making");
    }

    /** The other woods of the project, then some that are usual. */
    private static Map<String, Coefficients> woods(Clearance room, Joined joined) {
        Map<String, Coefficients> woods = new LinkedHashMap<>();
        String own = room.of().part().stuff().flatMap(Board::species).orElse("");
        for (Board board : joined.project().boards()) {
            if (!board.sheet() && !board.species().orElse(own).equals(own)) {
                Woods.of(board).ifPresent(species -> add(species, woods));
            }
        }
        for (String id : USUAL) {
            if (!id.equals(own) && woods.size() < MOST_WOODS) {
                SpeciesTable.published().get(id).ifPresent(species -> add(species, woods));
            }
        }
        return woods;
    }

    private static void add(Species species, Map<String, Coefficients> woods) {
        species.coefficients()
                .ifPresent(pair -> woods.putIfAbsent(species.commonName(), pair));
    }

    /** The other rooms of the project, and a heated room. */
    private static Map<String, Seasons> rooms(Clearance room, Joined joined) {
        Set<RoomClimate> airs = new LinkedHashSet<>();
        joined.project().settings().climate().ifPresent(airs::add);
        joined.parts().stream().map(FinishedPart::part).forEach(part -> part.service().room().ifPresent(airs::add));
        Map<String, Seasons> rooms = new LinkedHashMap<>();
        double bench = room.nature().seasons().bench();
        for (RoomClimate air : airs) {
            if (!room.nature().air().filter(air::equals).isPresent()) {
                String name = air.name().isEmpty() ? "in the project's room" : "in `" + air.name() + "`";
                rooms.put(name, seasons(Nature.climate(air), bench));
            }
        }
        Figures figures = Figures.standard();
        rooms.put(
                "in a heated room",
                seasons(new Climate.Range(
                        figures.value("room.humidity.from"),
                        figures.value("room.humidity.to"),
                        figures.value("room.temperature.from"),
                        figures.value("room.temperature.to")), bench));
        return rooms;
    }

    private static Seasons seasons(Climate climate, double bench) {
        return new Seasons(bench, climate.wettest().percentOr(bench), climate.driest().percentOr(bench));
    }

}

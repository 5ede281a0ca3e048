package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked examples of the trade's rules, evaluated by this package. The file's own formula and a third route gave the
 * expected value; the source of each stands in the name of its test.
 */
class WorkedExamplesTest {

    private static final Figures FIGURES = Figures.standard();
    private static final Citation ROW = Citation.of("worked example", "see the row");

    /** Topics other packages own, and single rows of shared topics that are no rule of wood. */
    private static final Set<String> ELSEWHERE = Set.of(
            "joint-length", "dovetail", "finger-joint", "glue-area", "tenon", "dowel", "groove-corner", "screw", "nail",
            "hinge", "drawbore", "kerf", "run", "resaw", "allowance", "stock", "rip", "layout", "square", "mitre-error",
            "polygon", "stack", "iso", "fit", "board-feet", "fraction", "units", "grain-run", "spline", "yield",
            "contents");

    /** The inputs of one row by name. */
    private record Inputs(Map<String, String> byName) {
        static Inputs of(String cell) {
            Map<String, String> byName = new HashMap<>();
            for (String part : cell.split(";")) {
                int equals = part.indexOf('=');
                byName.put(part.substring(0, equals).strip(), part.substring(equals + 1).strip());
            }
            return new Inputs(byName);
        }

        double get(String name) {
            return Double.parseDouble(byName.get(name));
        }

        double getOr(String name, double otherwise) {
            return byName.containsKey(name) ? get(name) : otherwise;
        }

        Coefficient coefficient(String name) {
            return Coefficient.given(get(name), ROW);
        }

        /** Bench, wet and dry; an extreme that is not given is the bench, a bench that is not given the dry one. */
        Seasons seasons() {
            double bench = getOr("mc_build", getOr("mc_dry", 0));
            return new Seasons(bench, getOr("mc_wet", bench), getOr("mc_dry", bench));
        }

        /** A change of moisture laid about 10 %, where the proportional rule holds. */
        double from() {
            return 10 - get("d_mc") / 2;
        }

        double to() {
            return 10 + get("d_mc") / 2;
        }

        Seasons swing() {
            return new Seasons(from(), to(), from());
        }

        double emc(String humidity) {
            return EquilibriumMoistureTest.percent(EquilibriumMoisture.at(get("tc"), get(humidity)));
        }
    }

    static Stream<Arguments> rows() {
        return Csv.load("worked-examples.csv").rows().stream()
                .filter(row -> !ELSEWHERE.contains(row.text("topic")))
                .filter(row -> !row.text("id").equals("WE-133")) // the area of a box: geometry
                .map(row -> Arguments.of(row.text("id"), row.text("case"), row.text("source"), row));
    }

    @ParameterizedTest(name = "{0} {1} [{2}]")
    @MethodSource("rows")
    void workedExample(String id, String ignoredCase, String ignoredSource, Csv.Row row) {
        Inputs in = Inputs.of(row.text("inputs"));
        double actual = switch (row.text("topic")) {
            case "emc" -> in.emc("rh");
            case "movement", "ring-angle", "sheet" -> movement(id, in);
            case "panel", "breadboard", "table-top", "cross-grain" -> fixing(id, in);
            case "drawer", "door", "lid" -> opening(id, in);
            case "mitre-frame", "mitre-box", "cup" -> shape(id, in);
            case "sag", "load", "withdrawal", "tipping", "weight" -> strength(id, in);
            case "glue", "clamp", "finish" -> consumable(id, in);
            default -> throw new AssertionError("no check for " + id);
        };
        assertThat(actual)
                .as(row.text("quantity"))
                .isCloseTo(row.required("expected"), within(row.required("tolerance")));
    }

    private static double movement(String id, Inputs in) {
        return switch (id) {
            case "WE-007", "WE-008", "WE-009" ->
                Movement.change(in.get("width_mm"), in.coefficient("C"), in.get("mc_from"), in.get("mc_to"))
                        .changeMm();
            case "WE-010" ->
                Movement.change(in.get("width_in"), in.coefficient("C"), in.from(), in.to())
                        .changeMm();
            case "WE-011", "WE-012" ->
                Movement.change(in.get("width_in"), in.coefficient("C"), in.emc("rh1"), in.emc("rh2"))
                        .changeMm();
            case "WE-013" -> {
                // Quartered all the way: the thickness moves tangentially, whatever the radial figure.
                Coefficient thickness = Coefficient.of(
                        Coefficients.declared(in.get("C_T"), 0.00165),
                        new Rings.Angle(90),
                        Direction.THICKNESS,
                        FIGURES);
                yield Movement.change(in.get("thick_in"), thickness, in.emc("rh1"), in.emc("rh2"))
                        .changeMm();
            }
            case "WE-014" ->
                Movement.fromGreen(in.get("D_mm"), in.get("S_pct"), 30, in.get("mi"), in.get("mf"));
            case "WE-015" -> Movement.coefficientOf(in.get("S_pct"), 30);
            case "WE-016", "WE-017", "WE-018" ->
                Coefficient.of(
                        Coefficients.declared(in.get("C_T"), in.get("C_R")),
                        new Rings.Angle(in.get("theta_deg")),
                        Direction.WIDTH,
                        FIGURES)
                        .perPercent();
            case "WE-019" ->
                Movement.diamond(
                        Coefficients.declared(in.get("C_T"), in.get("C_R")),
                        new Rings.Angle(in.get("theta_deg")),
                        in.get("d_mc"),
                        FIGURES)
                        .degrees();
            case "WE-050" ->
                SheetGoods.get("plywood").orElseThrow().growth(in.get("width_mm"), in.get("d_rh"));
            case "WE-051" ->
                Boards.back(in.get("board_mm"), in.coefficient("C"), in.seasons(), FIGURES)
                        .gapMm();
            default -> throw new AssertionError("no check for " + id);
        };
    }

    private static double fixing(String id, Inputs in) {
        Coefficient c = in.coefficient("C");
        return switch (id) {
            case "WE-020", "WE-021" ->
                Panels.widest(in.get("opening_mm"), in.get("groove_mm"), in.get("clear_mm"), c, in.seasons())
                        .panelMm();
            case "WE-022", "WE-023" -> Panels.tight(panel(in, Panels.Hold.FREE), FIGURES).gapMm();
            case "WE-024" -> Panels.loose(panel(in, Panels.Hold.FREE), FIGURES).coverMm();
            case "WE-025" -> Panels.loose(panel(in, Panels.Hold.MIDDLE), FIGURES).coverMm();
            case "WE-026" ->
                Panels.shoulder(in.get("panel_mm"), c, in.seasons(), FIGURES).neededMm();
            case "WE-027" ->
                Breadboards.pegSlot(in.get("x_mm"), in.get("peg_mm"), c, in.seasons(), FIGURES)
                        .lengthMm();
            case "WE-028" -> Breadboards.overhang(in.get("width_mm"), c, in.seasons()).wettestMm();
            case "WE-029" ->
                Tops.button(in.get("x_mm"), 6, c, in.seasons(), FIGURES).behindMm();
            case "WE-030" ->
                Tops.screwSlot(in.get("x_mm"), in.get("shank_mm"), c, in.seasons(), FIGURES)
                        .lengthMm();
            case "WE-036", "WE-037" ->
                CrossGrain.glued(in.get("width_mm"), c, in.swing(), FIGURES).mismatchMm();
            case "WE-038" -> CrossGrain.widestGluedMm(in.get("limit_mm"), c, in.swing());
            default -> throw new AssertionError("no check for " + id);
        };
    }

    private static Panels.Panel panel(Inputs in, Panels.Hold hold) {
        return new Panels.Panel(
                in.get("opening_mm"),
                in.get("groove_mm"),
                in.get("panel_mm"),
                hold,
                in.coefficient("C"),
                in.seasons());
    }

    private static double opening(String id, Inputs in) {
        return switch (id) {
            case "WE-031" ->
                Drawers.bottom(in.get("depth_mm"), 5, in.coefficient("C"), in.seasons(), FIGURES)
                        .drawsInMm();
            case "WE-032", "WE-033" ->
                Drawers.height(in.get("height_mm"), in.coefficient("C"), in.seasons(), FIGURES)
                        .neededMm();
            case "WE-034" ->
                Drawers.width(in.get("t_mm"), in.coefficient("C_T"), in.swing(), FIGURES)
                        .growthMm();
            case "WE-035" ->
                Drawers.behind(in.get("case_mm"), in.coefficient("C"), in.seasons(), FIGURES)
                        .neededMm();
            case "WE-039", "WE-040" ->
                Openings.door(in.get("width_mm"), in.coefficient("C"), in.seasons(), FIGURES)
                        .neededMm();
            case "WE-041" ->
                Openings.slidingLid(in.get("between_mm"), in.coefficient("C"), in.seasons(), FIGURES)
                        .panelMm();
            default -> throw new AssertionError("no check for " + id);
        };
    }

    private static double shape(String id, Inputs in) {
        return switch (id) {
            case "WE-042", "WE-043" -> mitre(in, "w_mm", "C").gapMm();
            case "WE-044" ->
                Mitres.opened(1, in.coefficient("C"), in.from(), in.to(), 45, FIGURES)
                        .angleChangeDegrees();
            case "WE-045" -> Mitres.widestMemberMm(in.get("gap_mm"), in.coefficient("C"), in.swing(), FIGURES);
            case "WE-046" -> mitre(in, "t_mm", "C_R").gapMm();
            case "WE-047", "WE-048" ->
                Cupping.ofRings(
                        in.get("w_mm"),
                        in.get("R_mm"),
                        Coefficients.declared(in.get("C_T"), in.get("C_R")),
                        in.from(),
                        in.to())
                        .depthMm();
            case "WE-049" ->
                Cupping.ofResawingMm(in.get("w_mm"), in.get("t_mm"), in.coefficient("C"), in.get("mc_diff"));
            default -> throw new AssertionError("no check for " + id);
        };
    }

    private static Mitres.Opened mitre(Inputs in, String size, String coefficient) {
        return Mitres.opened(in.get(size), in.coefficient(coefficient), in.from(), in.to(), 45, FIGURES);
    }

    private static double strength(String id, Inputs in) {
        return switch (id) {
            case "WE-114", "WE-115" -> {
                Section board = Section.board(in.get("b_mm"), in.get("h_mm"), in.get("E_MPa"));
                Shelves.Load books = new Shelves.Load.Even(in.get("q_N_mm"));
                yield Shelves.sag(in.get("L_mm"), board, books, Shelves.Ends.RESTING, FIGURES).firstMm();
            }
            case "WE-116" -> {
                Section board = Section.board(in.get("b_mm"), in.get("h_mm"), in.get("E_MPa"));
                Shelves.Load pot = new Shelves.Load.Middle(in.get("P_N"));
                yield Shelves.sag(in.get("L_mm"), board, pot, Shelves.Ends.RESTING, FIGURES).firstMm();
            }
            case "WE-117", "WE-118", "WE-119", "WE-120" ->
                ShelvesTest.spanInches(in.get("E_psi"), in.get("h_in"), in.get("load_psf"));
            case "WE-121" ->
                // The figure itself: 0.02 in a foot is one in six hundred.
                FIGURES.value("shelf.aim");
            case "WE-122" -> FIGURES.value("shelf.load.books") * 1000;
            case "WE-123" -> screw(in.get("G"), in.get("D_mm"), in.get("L_mm")).ultimateN();
            case "WE-124" -> screw(in.get("G"), in.get("D_in") * 25.4, in.get("L_in") * 25.4).workingN();
            case "WE-125" ->
                PullOut.of(
                        PullOut.Fastener.PLAIN_NAIL,
                        PullOut.Grain.SIDE,
                        in.get("G"),
                        in.get("D_mm"),
                        in.get("L_mm"),
                        FIGURES)
                        .ultimateN();
            case "WE-126" ->
                Tipping.pushN(
                        in.get("case_kg"), in.get("cg_mm"), in.get("drawers_kg"), in.get("reach_mm"), 400, FIGURES);
            case "WE-127" -> Shelves.massKg(in.get("l_mm"), in.get("w_mm"), in.get("t_mm"), in.get("rho"));
            case "WE-128" -> {
                // A modulus of one turns stiffness into the second moment of area.
                Section.Piece board = new Section.Piece(in.get("b1_mm"), in.get("h1_mm"), 0, 1);
                yield Section.lipped(board, in.get("b2_mm"), in.get("h2_mm"), 1).stiffness();
            }
            case "WE-166" -> in.get("first_mm") * FIGURES.value("shelf.creep");
            default -> throw new AssertionError("no check for " + id);
        };
    }

    private static PullOut.Pull screw(double gravity, double shankMm, double threadMm) {
        return PullOut.of(
                PullOut.Fastener.WOOD_SCREW, PullOut.Grain.SIDE, gravity, shankMm, threadMm, FIGURES);
    }

    private static double consumable(String id, Inputs in) {
        return switch (id) {
            case "WE-129" -> Consumables.glueMl(in.get("area_mm2"), in.get("film_mm"));
            case "WE-130" -> {
                // A gallon, 231 cubic inches, over the area of one square foot's film.
                double footMl = Consumables.glueMl(304.8 * 304.8, in.get("mil") * 0.0254);
                yield 231 * 25.4 * 25.4 * 25.4 / 1000 / footMl;
            }
            case "WE-131" -> Consumables.clampingN(in.get("l_mm") * in.get("t_mm"), in.get("psi") * 0.00689476) / 1000;
            case "WE-132" ->
                Consumables.finishLitres(in.get("area_m2"), (int) in.get("coats"), in.get("m2_per_l"));
            default -> throw new AssertionError("no check for " + id);
        };
    }
}

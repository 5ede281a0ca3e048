package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.treen.finding.Severity;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Season and making in one number, and the derivatives that it rests on. */
@SuppressWarnings("ReferenceEquality") // leaves of a derivation are told apart by which they are, not by their value
class ClearanceTest {
    private static final String STATED = "tools    hand; tolerance { length 0.1; width 0.1; depth 0.05 }";

    private static Clearance room(Bench bench, String part) {
        return Clearances.of(bench.joined()).stream()
                .filter(c -> c.of().part().name().equals(part))
                .findFirst()
                .orElseThrow();
    }

    /** WE-105 and WE-106 (F-06): ± 0.2, 0.1, 0.1, 0.2 add up to 0.6 and to 0.316 by their squares; a side has half. */
    @Test
    void makingAddsUpInTheWorstWayAndAsARule() {
        Clearance base = room(Bench.caddy(), "base");
        assertThat(base.deviations()).extracting(Clearance.Deviation::what)
                .containsExactly("opening", "groove", "groove opposite", "width");
        assertThat(base.deviations()).extracting(Clearance.Deviation::slope).containsExactly(0.5, 0.5, 0.5, -0.5);
        assertThat(base.worstMm()).isCloseTo(0.3, offset(1e-12));
        assertThat(base.likelyMm()).isCloseTo(Math.sqrt(0.1) / 2, offset(1e-12));
        assertThat(base.largest().getFirst().what()).isEqualTo("opening");
    }

    /** 0.83 less 0.33 less 0.3; the driest is 6.88 % (35 % at 24 °C, Wood Handbook eq. 4-5). */
    @Test
    void seasonAndMakingAreOneNumber() {
        Clearance base = room(Bench.caddy(), "base");
        assertThat(base.tightest().mm()).isCloseTo(base.benchMm() - base.swellingMm() - 0.3, offset(1e-9));
        assertThat(base.tightest().mm()).isBetween(0.2, 0.211);
        assertThat(base.tightest().when()).isEqualTo("in the dampest season");
        assertThat(base.tightest().cause()).isEqualTo("the season");
        double dry = 0.00248 * (9 - 6.88) * Bench.caddy().part("base").width().value().toDoubleMm() / 2;
        assertThat(base.loosest().mm()).isCloseTo(base.benchMm() + dry + 0.3, offset(0.003));
        Bench months = Bench.caddy().with("humidity 35%..65%; temperature 18degC..24degC",
                "humidity 38%, 36%, 40%, 45%, 52%, 58%, 63%, 65%, 60%, 52%, 45%, 40%; temperature 21degC");
        assertThat(room(months, "base").tightest().when()).isEqualTo("in August");
        assertThat(room(months, "base").loosest().when()).isEqualTo("in February");
    }

    /** Ten thousand bases made with errors of the stated spread (uniform): their spread is that of the squares. */
    @Test
    void manyMadePiecesScatterAsTheSquaresSay() {
        Clearance base = room(Bench.caddy(), "base");
        Random random = new Random(20_240_611);
        int many = 20_000;
        double sum = 0;
        double squares = 0;
        double worst = 0;
        for (int i = 0; i < many; i++) {
            double error = 0;
            for (Clearance.Deviation each : base.deviations()) {
                error += each.slope() * each.tolerance().mm() * (2 * random.nextDouble() - 1);
            }
            sum += error;
            squares += error * error;
            worst = Math.max(worst, Math.abs(error));
        }
        // A uniform error of ± t has a standard deviation of t/√3, and so has a sum of them of RSS/√3.
        double spread = Math.sqrt(squares / many);
        double wanted = base.likelyMm() / Math.sqrt(3);
        assertThat(spread).isCloseTo(wanted, offset(3 * wanted / Math.sqrt(2.0 * many)));
        assertThat(sum / many).isCloseTo(0, offset(4 * wanted / Math.sqrt(many)));
        assertThat(worst).isLessThanOrEqualTo(base.worstMm());
    }

    /** With tolerances stated, `auto` is the smallest gap that they leave nothing of, and 0.01 less is told. */
    @Test
    void autoIsTheSmallestThatStandsTheStatedTolerances() {
        Bench fine = Bench.caddy().with("tools    hand", STATED);
        assertThat(fine.codes()).isEmpty();
        assertThat(room(fine, "base").worstMm()).isCloseTo(0.15, offset(1e-12));
        assertThat(room(fine, "base").tightest().mm()).isBetween(0.0, 0.0101);
        double gap = fine.figure("base", "front", "gap").toDoubleMm();
        assertThat(fine.figure("base", "front", "gap")).isLessThan(Bench.caddy().figure("base", "front", "gap"));
        Bench less = fine.with("gap auto", "gap " + String.format(java.util.Locale.ROOT, "%.2f", gap - 0.02));
        assertThat(less.codes()).containsExactly("panel-tight");
        assertThat(less.finding("panel-tight").severity()).isEqualTo(Severity.WARNING);
        assertThat(less.mended("panel-tight").codes()).isEmpty();
    }

    /** Random sums, differences, products and quotients, differentiated exactly and by a small step either way. */
    @Test
    void derivativesAgreeWithFiniteDifferences() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            List<Derivation> leaves = new ArrayList<>();
            Term term = term(random, leaves, 4);
            for (Derivation leaf : leaves) {
                double exact = Derivatives.of(term.how(), node -> node == leaf).doubleValue();
                double step = 1e-6;
                double found = (term.value().applyAsDouble(new Moved(leaf, step))
                        - term.value().applyAsDouble(new Moved(leaf, -step))) / (2 * step);
                double scale = Math.max(1, Math.abs(exact));
                assertThat(found).isCloseTo(exact, offset(1e-4 * scale));
            }
        }
    }

    private record Moved(Derivation leaf, double by) {}

    private record Term(Derivation how, ToDoubleFunction<Moved> value) {}

    private static Term term(Random random, List<Derivation> leaves, int depth) {
        if (depth == 0 || random.nextInt(5) == 0) {
            BigFraction amount = BigFraction.of(1 + random.nextInt(40), 1 + random.nextInt(8));
            Derivation leaf = new Derivation(
                    "leaf", number(amount), new Derivation.Standard("a test"), Optional.empty());
            leaves.add(leaf);
            double at = amount.doubleValue();
            return new Term(leaf, moved -> at + (moved.leaf() == leaf ? moved.by() : 0));
        }
        Term left = term(random, leaves, depth - 1);
        Term right = term(random, leaves, depth - 1);
        String sign = List.of("+", "−", "×", "÷").get(random.nextInt(4));
        BigFraction a = amount(left.how());
        BigFraction b = amount(right.how());
        if (sign.equals("÷") && Math.abs(b.doubleValue()) < 0.5) {
            sign = "+";
        }
        String used = sign;
        BigFraction value = switch (used) {
            case "+" -> a.add(b);
            case "−" -> a.subtract(b);
            case "×" -> a.multiply(b);
            default -> a.divide(b);
        };
        return new Term(
                Derivation.combined("", number(value), used, left.how(), right.how()),
                moved -> {
                    double x = left.value().applyAsDouble(moved);
                    double y = right.value().applyAsDouble(moved);
                    return switch (used) {
                        case "+" -> x + y;
                        case "−" -> x - y;
                        case "×" -> x * y;
                        default -> x / y;
                    };
                });
    }

    private static Datum number(BigFraction amount) {
        return new Datum.Exactly(Quantity.number(amount));
    }

    private static BigFraction amount(Derivation how) {
        return how.value() instanceof Datum.Exactly(var quantity) ? quantity.amount() : BigFraction.ZERO;
    }

    /** A door of cherry 400 wide, 8 to 12.06 %: WE-039 (M-13) has 400 × 0.00248 × 4 + 1 = 4.97 for 8 to 12 %. */
    @Test
    void aDoorHasItsRoomOnTheLockSide() {
        Bench door = door("hinge left; gap auto");
        assertThat(door.codes()).isEmpty();
        assertThat(door.figure("door", "right", "gap").toDoubleMm())
                .isCloseTo(400 * 0.00248 * 4.06 + 1, offset(0.02));
        assertThat(door.figure("door", "left", "gap").toDoubleMm()).isEqualTo(1);
        assertThat(door.part("door").width().value().toDoubleMm()).isCloseTo(400 - 1 - 5.03, offset(0.02));
        Bench tight = door("hinge left; gap 2");
        assertThat(tight.finding("door-binds").severity()).isEqualTo(Severity.ERROR);
        assertThat(tight.finding("door-binds").found()).contains("1.99 mm too little");
        assertThat(tight.mended("door-binds").codes()).isEmpty();
        assertThat(tight.with("gap 2", "gap 4.3").finding("door-binds").severity()).isEqualTo(Severity.WARNING);
        assertThat(door("gap 1").codes()).containsExactly("lid-jams");
        assertThat(door("gap 1").mended("lid-jams").codes()).isEmpty();
        double clearance = door.checked().facts().fact("door", "clearance").orElseThrow()
                .value() instanceof Datum.Exactly(var quantity) ? quantity.amount().doubleValue() : 0;
        assertThat(clearance).as("1 mm less what the length of the door and its opening may err by")
                .isBetween(0.6, 0.85);
    }

    private static Bench door(String how) {
        return Bench.of("""
                project "Kitchen cupboard" { climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board cherry { species black_cherry; size 2400 x 450 x 40; rings flat; moisture 8%% }
                part left   { length 700; width 60; thickness 20; from cherry; place { length up; width right; at -60, 0, 0 } }
                part right  like left { place { at 400, 0, 0 } }
                part top    { length 520; width 60; thickness 20; from cherry; place { length right; width up; at -60, 0, 700 } }
                part door   { length 700; width 400; thickness 20; from cherry; place { length up; width right; at 0, 0, 0 } }
                joint inset door into left, right, top { %s }
                """.formatted(how));
    }

    /** WE-032 (M-11): maple 120 high, here 8 to 12.06 %, wants 120 × 0.00353 × 4.06 + 0.8 above it, and nothing below. */
    @Test
    void aDrawerHasItsRoomAbove() {
        Bench drawer = Bench.of("""
                project "Drawer" { climate { humidity 35%..65%; temperature 18degC..24degC } }
                board maple { species sugar_maple; size 2400 x 200 x 40; rings flat; moisture 8% }
                part rail_low  { length 400; width 40; thickness 20; from maple; place { length right; width back; at 0, 0, -20 } }
                part rail_high like rail_low { place { at 0, 0, 120 } }
                part front { length 400; width 120; thickness 20; from maple; place { length right; width up; at 0, 0, 0 } }
                joint inset front into rail_low, rail_high { gap auto; runs front }
                """);
        assertThat(drawer.codes()).isEmpty();
        assertThat(drawer.figure("front", "rail_high", "gap").toDoubleMm())
                .isCloseTo(120 * 0.00353 * 4.06 + 0.8, offset(0.02));
        assertThat(drawer.figure("front", "rail_low", "gap").toDoubleMm()).isEqualTo(0);
        Bench tight = drawer.with("gap auto", "gap 1");
        assertThat(tight.codes()).containsExactly("drawer-sticks");
        assertThat(tight.mended("drawer-sticks").codes()).isEmpty();
    }
}

package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.block;
import static dev.treen.solid.Numbers.cutter;
import static dev.treen.solid.Numbers.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.solid.Glue.Grain;
import org.junit.jupiter.api.Test;

/** Glue areas against the formulae of the trade's rules, named beside each check. */
class GlueTest {
    private static final Vec3 RIGHT = Side.RIGHT.unit();
    private static final Vec3 BACK = Side.BACK.unit();
    private static final Vec3 UP = Side.TOP.unit();

    @Test
    void tenonGluesOnItsCheeks() {
        // Rule J-10: 2 · length · width; end grain counts zero. Tenon 40 long, 50 wide, 8 thick.
        Solid stile = block(0, 0, 0, 60, 24, 500).subtract(cutter(20, 8, 100, 60, 16, 150), Origin.cut("tenon"));
        Solid rail = block(60, 0, 90, 300, 24, 160).union(block(20, 8, 100, 60, 16, 150));
        Glue glue = Glue.between(stile, UP, rail, RIGHT);
        assertThat(glue.longToLong()).isEqualTo(2.0 * 40 * 50);
        // Shoulders and the tenon's end are end grain of the rail; its edges lie against end grain of the stile.
        assertThat(glue.area(Grain.LONG, Grain.END)).isEqualTo(70.0 * 24 - 50 * 8 + 50 * 8);
        assertThat(glue.area(Grain.END, Grain.LONG)).isEqualTo(2.0 * 40 * 8);
    }

    @Test
    void fingersGlueBetweenThemselves() {
        // Rule J-14: (n − 1) · t1 · t2 for n fingers; here 7 of 12 in boards of 9 and 10.
        Solid front = block(0, 0, 0, 100, 9, 84);
        Solid side = block(0, 0, 0, 10, 100, 84);
        for (int i = 0; i < 7; i++) {
            Convex finger = cutter(0, 0, 12L * i, 10, 9, 12L * (i + 1));
            if (i % 2 == 0) {
                side = side.subtract(finger, Origin.cut("finger"));
            } else {
                front = front.subtract(finger, Origin.cut("finger"));
            }
        }
        assertThat(Glue.between(front, RIGHT, side, BACK).longToLong()).isEqualTo(6.0 * 9 * 10);
    }

    @Test
    void dovetailGluesOnItsSlopes() {
        // Rule J-11: 2 N · t1 · t2 / cos α per corner; one tail, slope 1:8, both boards 9, so cos α = 8/√65.
        var parts = AssemblyTest.dovetailed();
        Glue glue = Glue.between(parts.get(0).solid(), RIGHT, parts.get(1).solid(), BACK);
        assertThat(glue.longToLong()).isCloseTo(2.0 * 81 * Math.sqrt(65) / 8, within(1e-9));
    }

    @Test
    void mitreIsNearEndGrainInBothParts() {
        var caddy = AssemblyTest.caddy();
        Glue glue = Glue.between(caddy.get(0).solid(), RIGHT, caddy.get(2).solid(), BACK);
        assertThat(glue.longToLong()).isZero();
        // Face 9√2 by 84 less the groove of 4 by 5 where it runs out in the mitre.
        assertThat(glue.area(Grain.END, Grain.END)).isCloseTo(Math.sqrt(2) * (9 * 84 - 4 * 5), within(1e-9));
    }

    @Test
    void slopesAreToldApartExactly() {
        assertThat(Glue.grain(RIGHT, UP)).isEqualTo(Grain.LONG);
        assertThat(Glue.grain(RIGHT, at(1, 0, 5))).isEqualTo(Grain.LONG);
        assertThat(Glue.grain(RIGHT, at(100, 0, 499))).isEqualTo(Grain.SLANT);
        assertThat(Glue.grain(RIGHT, at(1, 0, 1))).isEqualTo(Grain.END);
        assertThat(Glue.squaredSine(RIGHT, at(1, 0, 8))).isEqualTo(Numbers.part(1, 65));
        assertThat(Glue.squaredSine(RIGHT, RIGHT)).isEqualTo(whole(1));
    }
}

package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.part;
import static dev.treen.solid.Numbers.whole;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The ways in which two boxes can lie to each other, each checked by hand. */
class BoxContactTest {
    private static final Box BOX = Box.of(0, 0, 0, 10, 10, 10);

    @Test
    void faceToFace() {
        assertThat(BOX.contact(Box.of(10, 2, 3, 15, 20, 7)))
                .isEqualTo(new BoxContact.FaceToFace(Side.RIGHT, at(10, 2, 3), at(10, 10, 7)));
        assertThat(BOX.contact(Box.of(2, 2, -4, 8, 8, 0)))
                .isInstanceOfSatisfying(BoxContact.FaceToFace.class, contact -> {
                    assertThat(contact.side()).isEqualTo(Side.BOTTOM);
                    assertThat(contact.area()).isEqualTo(whole(36));
                });
    }

    @Test
    void edgeAndCorner() {
        assertThat(BOX.contact(Box.of(10, -5, 2, 15, 0, 20)))
                .isEqualTo(new BoxContact.Edge(Axis.Z, at(10, 0, 2), at(10, 0, 10), Side.RIGHT, Side.FRONT));
        assertThat(BOX.contact(Box.of(-3, 10, 10, 0, 12, 12))).isEqualTo(new BoxContact.Corner(at(0, 10, 10)));
    }

    @Test
    void apartByAThirdOfAMillimetreIsNotTouching() {
        Box near = BOX.translate(Vec3.of(whole(10).add(part(1, 3)), whole(0), whole(0)));
        assertThat(BOX.contact(near)).isInstanceOfSatisfying(BoxContact.Apart.class, contact -> {
            assertThat(contact.gaps().x()).isEqualTo(part(1, 3));
            assertThat(contact.distanceSquared()).isEqualTo(part(1, 9));
        });
        assertThat(BOX.gap(near, Axis.Y)).isEqualTo(whole(-10));
    }

    @Test
    void overlapping() {
        assertThat(BOX.contact(Box.of(8, 9, -5, 20, 20, 20)))
                .isEqualTo(new BoxContact.Overlapping(Box.of(8, 9, 0, 10, 10, 10)));
    }
}

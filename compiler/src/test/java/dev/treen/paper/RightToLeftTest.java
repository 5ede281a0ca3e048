package dev.treen.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import com.ibm.icu.text.Bidi;
import java.text.Normalizer;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words from the right, held against ICU, which has code and tables of its own for both. */
class RightToLeftTest {
    private static final String HEBREW = "אבגדהוזחטיכלמנסעפצקרשת";
    private static final String ARABIC = "ءآأؤإئابةتثجحخدذرزسشصضطظعغفقكلمنهوىي";

    private static String icu(String text) {
        return new Bidi(text, Bidi.RTL).writeReordered(Bidi.DO_MIRRORING | Bidi.KEEP_BASE_COMBINING);
    }

    private static String drawn(Random random, String letters, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(letters.charAt(random.nextInt(letters.length())));
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"קופסת תה", "לוח 12 מתוך 3", "קרש_2", "צד (קדמי)", "שָׁלוֹם", "מגירה drawer שמאל", "12 מ״מ, 3.5",
                    "صندوق شاي 12", "لوح [3]", "خَشَب", "درج «top» يسار"})
    void areInTheOrderInWhichTheyAreSeen(String words) {
        assertThat(RightToLeft.seen(words)).isEqualTo(icu(words));
    }

    @Test
    void drawnWordsAreInThatOrderToo() {
        Random random = new Random(7);
        for (int i = 0; i < 5000; i++) {
            String words = drawn(random, HEBREW + ARABIC + "0123456789 ,._abc", 1 + random.nextInt(20));
            assertThat(RightToLeft.seen(words)).as(words).isEqualTo(icu(words));
        }
    }

    @Test
    void lettersAreJoinedAsTheirNeighboursAsk() throws ArabicShapingException {
        ArabicShaping shaping = new ArabicShaping(ArabicShaping.LETTERS_SHAPE | ArabicShaping.TEXT_DIRECTION_LOGICAL
                | ArabicShaping.LENGTH_GROW_SHRINK);
        Random random = new Random(11);
        for (int i = 0; i < 5000; i++) {
            String words = drawn(random, ARABIC + " ", 1 + random.nextInt(12));
            assertThat(ArabicForms.joined(words)).as(words).isEqualTo(shaping.shape(words));
        }
    }

    /** Persian letters have their forms in another block; charts of Unicode, FB50. */
    @Test
    void persianLettersAreJoinedToo() {
        assertThat(ArabicForms.joined("پنجره")).isEqualTo("\ufb58\ufee8\ufea0\ufeae\ufee9");
        assertThat(ArabicForms.joined("چوب گردو")).isEqualTo("\ufb7c\ufeee\ufe8f \ufb94\ufeae\ufea9\ufeed");
    }

    @Test
    void marksAreNoNeighbours() {
        assertThat(ArabicForms.joined("خَشَب")).isEqualTo("\ufea7\u064e\ufeb8\u064e\ufe90");
    }

    @Test
    void lettersComeApartAgain() {
        Random random = new Random(13);
        for (int i = 0; i < 1000; i++) {
            String words = drawn(random, ARABIC + HEBREW + " پچگژ12", 15);
            assertThat(ArabicForms.apart(ArabicForms.joined(words))).isEqualTo(words)
                    .isEqualTo(Normalizer.normalize(ArabicForms.joined(words), Normalizer.Form.NFKC));
        }
    }

    @Test
    void otherWordsStayAsTheyAre() {
        assertThat(ArabicForms.joined("tea caddy, 12 mm, 木箱 😀")).isEqualTo("tea caddy, 12 mm, 木箱 😀");
        assertThat(RightToLeft.any("tea caddy, 12 mm, 木箱 😀")).isFalse();
        assertThat(RightToLeft.any("tea קופסה")).isTrue();
    }
}

package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 2768-1:1989, Table 1: WE-110 to WE-112, and the ends of its ranges. */
class GeneralTolerancesTest {
    @ParameterizedTest(name = "{0}: {1} mm of class {2} is made to plus or minus {3}")
    @CsvSource({
            "WE-110, 178, medium, 0.5",
            "WE-111, 84, coarse, 0.8",
            "WE-112, 900, medium, 0.8",
            "the first range has its lower bound, 0.5, fine, 0.05",
            "every range has its upper bound, 3, fine, 0.05",
            "beyond it begins the next, 3.01, coarse, 0.3",
            "the largest size, 4000, very_coarse, 8",
    })
    void publishedLimits(String row, double size, String grade, double limit) {
        GeneralTolerances.Limit found = GeneralTolerances.of(grade, size).orElseThrow();
        assertThat(found.mm()).isEqualTo(limit);
        assertThat(found.citation().source()).startsWith("ISO 2768-1");
    }

    @Test
    void sizesOfWhichTheClassSaysNothing() {
        assertThat(GeneralTolerances.of("fine", 0.49)).isEmpty();
        assertThat(GeneralTolerances.of("fine", 2001)).isEmpty();
        assertThat(GeneralTolerances.of("very_coarse", 3)).isEmpty();
        assertThat(GeneralTolerances.of("medium", 4001)).isEmpty();
        assertThat(GeneralTolerances.of("splendid", 100)).isEmpty();
    }
}

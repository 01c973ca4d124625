package batchwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    private static final List<String> NAMES = List.of(
            "rolled_oats", "dates", "chicken_thigh", "chicken_breast", "egg", "milk", "soy_milk", "salt", "malt");

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource({
        "roled_oats, rolled_oats",
        "rolled_oast, rolled_oats",
        "Rolled Oats, rolled_oats",
        "rolled-oats, rolled_oats",
        "oats, rolled_oats",
        "thigh, chicken_thigh",
        "chickn_brest, chicken_breast",
        "egs, egg",
        "mlik, milk",
        "chicken, ",
        "zzz, ",
        "'', "
    })
    void the_name_that_was_meant(String typed, String meant) {
        assertThat(NearestName.of(typed, NAMES).orElse(null)).isEqualTo(meant);
    }

    @Test
    void the_first_in_the_alphabet_wins_a_tie() {
        assertThat(NearestName.of("aalt", List.of("salt", "malt"))).contains("malt");
    }

    /** Worked on paper; "ca" to "abc" is 3 because no letter is touched twice (optimal string alignment). */
    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource({
        "'', abc, 3",
        "egg, egg, 0",
        "eg, egg, 1",
        "gge, egg, 2",
        "ab, ba, 1",
        "ca, abc, 3",
        "kitten, sitting, 3"
    })
    void slips_are_counted(String a, String b, int slips) {
        assertThat(NearestName.slips(a, b)).isEqualTo(slips);
        assertThat(NearestName.slips(b, a)).isEqualTo(slips);
    }
}

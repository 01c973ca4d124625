package batchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnergyBandTest {
    private static BigDecimal of(String value) {
        return new BigDecimal(value);
    }

    @Test
    void three_per_cent_around_700_is_679_to_721() {
        EnergyBand band = EnergyBand.around(of("700"), EnergyBand.USUAL_PERCENT);

        assertThat(band.leastKcal()).isEqualByComparingTo("679");
        assertThat(band.mostKcal()).isEqualByComparingTo("721");
        assertThat(band.holds(of("721"))).isTrue();
        assertThat(band.holds(of("721.01"))).isFalse();
        assertThat(band.holds(of("678.99"))).isFalse();
    }

    @Test
    void between_two_ends_it_aims_at_the_middle() {
        assertThat(EnergyBand.between(of("600"), of("705")).aimKcal()).isEqualByComparingTo("652.5");
        assertThatThrownBy(() -> EnergyBand.between(of("2"), of("1"))).isInstanceOf(IllegalArgumentException.class);
    }

    /** By as little as does it, in whole kcal. */
    @ParameterizedTest
    @CsvSource({
        "700, 3, 812.4, 787.64, 836.36",
        "700, 0, 812.4, 812, 813",
        "700, 0, 812, 812, 812",
        "700, 3, 512.6, 497.61, 528.39",
    })
    void moves_to_an_energy_that_can_be_reached(String aim, String percent, String kcal, String least, String most) {
        EnergyBand moved = EnergyBand.around(of(aim), of(percent)).reaching(of(kcal));

        assertThat(moved.leastKcal()).isEqualByComparingTo(least);
        assertThat(moved.mostKcal()).isEqualByComparingTo(most);
        assertThat(moved.holds(of(kcal))).isTrue();
    }

    @Test
    void two_ends_are_widened_at_one() {
        EnergyBand band = EnergyBand.between(of("600"), of("700"));

        assertThat(band.reaching(of("812.4"))).isEqualTo(EnergyBand.between(of("600"), of("813")));
        assertThat(band.reaching(of("512.4"))).isEqualTo(EnergyBand.between(of("512"), of("700")));
    }
}

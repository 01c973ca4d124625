package batchwright.needs.total;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.person.Diaries;
import batchwright.quantity.Mass;
import org.junit.jupiter.api.Test;

class MetCostPublishedTest {
    private static final Mass KG_68 = new Mass(68);

    /** Worked example of a trainers' association: 10 METs, 68 kg: 11.9 kcal a minute, 357 kcal in half an hour. */
    @Test
    void ten_mets_for_half_an_hour() {
        assertThat(MetCost.byOxygen(10, KG_68, 1).kcal()).isCloseTo(11.9, within(1e-9));
        assertThat(MetCost.byOxygen(10, KG_68, 30).kcal()).isCloseTo(357, within(1e-9));
    }

    /** 3.5 ml of oxygen x 5 kcal a litre x 60 minutes = 1.05 kcal per kg and hour: 5 % more than the other reading. */
    @Test
    void the_two_readings_of_a_met_are_5_percent_apart() {
        assertThat(MetCost.byHour(10, KG_68, 0.5).kcal()).isCloseTo(340, within(1e-9));
        assertThat(MetCost.byOxygen(10, KG_68, 30).kcal()
                        / MetCost.byHour(10, KG_68, 0.5).kcal())
                .isCloseTo(1.05, within(1e-12));
    }

    @Test
    void a_day_of_lying_costs_24_hours_of_one_met() {
        var day = Diaries.of("lying 24");
        assertThat(MetCost.ofDayByHour(day, KG_68).kcal()).isCloseTo(68 * 24, within(1e-9));
        assertThat(MetCost.ofDayByOxygen(day, KG_68).kcal()).isCloseTo(68 * 24 * 1.05, within(1e-9));
    }
}

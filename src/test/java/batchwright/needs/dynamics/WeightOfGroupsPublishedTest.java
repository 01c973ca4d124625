package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.quantity.Energy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What groups of people weighed who ate more or less for some time; sources, starts and tolerances stand in the table. */
class WeightOfGroupsPublishedTest {
    /** Fat is measured worse than weight [kg]. */
    private static final double FAT_TOLERANCE_KG = 1.5;

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/published/weight_groups.csv", numLinesToSkip = 7)
    void changes_as_the_group_did(
            String id,
            String study,
            Integer people,
            double days,
            double kg,
            double fatKg,
            double totalKcal,
            double pal,
            double changeKcal,
            double observedKg,
            Double observedFatKg,
            double toleranceKg,
            String start) {
        var model = new BodyModel(Bodies.of(kg, fatKg, totalKcal, pal));
        BodyState then = model.after(days, new Energy(totalKcal + changeKcal), model.start());

        assertThat(then.weightKg() - kg).isCloseTo(observedKg, within(toleranceKg));
        if (observedFatKg != null) {
            assertThat(then.fatKg() - fatKg).isCloseTo(observedFatKg, within(FAT_TOLERANCE_KG));
        }
    }

    /**
     * Mueller 2015 (32 men, body ours): a week at +50 %, three weeks at -50 % (rows G10 and G11), and then two weeks at +50 % in which they
     * gained 3.5 kg. To 2 kg, as the other groups.
     */
    @Test
    void refed_men_gained_as_they_did() {
        var model = new BodyModel(Bodies.of(80, 15, 2900, 1.6));
        var more = new Energy(2900 + 1450);
        BodyState fed = model.after(7, more, model.start());
        BodyState starved = model.after(21, new Energy(2900 - 1450), fed);
        BodyState refed = model.after(14, more, starved);

        assertThat(refed.weightKg() - starved.weightKg()).isCloseTo(3.5, within(2.0));
    }
}

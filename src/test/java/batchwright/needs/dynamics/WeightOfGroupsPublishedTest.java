package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.quantity.Energy;
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
}

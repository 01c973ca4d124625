package batchwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.needs.learning.TargetStep;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.WeighedDay;
import batchwright.person.Eater;
import batchwright.person.Sex;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** From a record to an adopted step, and what needs say then. */
class LearnedTargetTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final Eater EATER = TestEater.of(TestEater.body(Sex.MALE, 85, 180, 35))
            .pal(1.6)
            .percentAWeek(-0.5)
            .eater();

    private final List<WeighedDay> days = new ArrayList<>();
    private final List<TargetStep> steps = new ArrayList<>();

    private LearnedTarget today() {
        return new LearnedTarget(
                new LearnedTarget.Records() {
                    @Override
                    public List<WeighedDay> days(String eater) {
                        return days;
                    }

                    @Override
                    public List<TargetStep> adopted(String eater) {
                        return steps;
                    }

                    @Override
                    public void adopt(String eater, TargetStep step) {
                        steps.add(step);
                    }
                },
                FIRST.plusDays(days.size()));
    }

    /** Weight stands still, whatever the deficit. */
    private void record(int count, double kcal) {
        for (int i = 0; i < count; i++) {
            double kg = 85 + (days.size() % 2 == 0 ? 0.2 : -0.2);
            days.add(new WeighedDay(
                    FIRST.plusDays(days.size()), OptionalDouble.of(kg), new DayIntake(kcal, 0, true), Set.of()));
        }
    }

    private static int aim(batchwright.needs.Needs needs) {
        return needs.target().orElseThrow().energyAimKcal();
    }

    @Test
    void an_adopted_step_changes_needs_and_the_next_comes_two_weeks_later() {
        int before = aim(today().needs(EATER));
        record(42, before);
        TargetStep step = today().adopt(EATER);

        assertThat(steps).containsExactly(step);
        assertThat(aim(today().needs(EATER))).isBetween(before - 151, before - 50);
        assertThat(today().needs(EATER).total().kcal()).isCloseTo(step.holdsKcal(), within(0.5));
        assertThatThrownBy(() -> today().adopt(EATER)).isInstanceOf(Refused.class);
        assertThat(steps).hasSize(1);
    }

    @Test
    void nothing_is_written_without_an_offer() {
        record(5, 2000);

        assertThatThrownBy(() -> today().adopt(EATER)).isInstanceOf(Refused.class);
        assertThat(steps).isEmpty();
    }
}

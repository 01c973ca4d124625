package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.solve.mip.Completion;
import batchwright.solve.mip.StepBudget;
import org.junit.jupiter.api.Test;

class TimeSlicesTest {
    private final StepBudget budget = new StepBudget(0);
    private final TimeSlices slices = new TimeSlices(budget, 3);

    private int spendAll() {
        int steps = 0;
        while (!budget.isSpent()) {
            budget.spend();
            steps++;
        }
        return steps;
    }

    @Test
    void each_slice_is_twice_as_long_as_the_one_before() {
        slices.begin();
        assertThat(spendAll()).isEqualTo(3);
        slices.begin();
        assertThat(spendAll()).isEqualTo(6);
        slices.begin();
        assertThat(spendAll()).isEqualTo(12);
    }

    /** A slice that began at 100 and took 40 ended at 140; others may spend 40 before the next. */
    @Test
    void others_may_spend_as_much_before_the_next_slice() {
        assertThat(slices.resumeAt()).isZero();

        slices.end(100, 40);
        assertThat(slices.resumeAt()).isEqualTo(180);
    }

    @Test
    void with_another_clock_nobody_waits_but_what_is_finished_never_goes_on() {
        slices.end(100, 40);
        slices.restartClock();
        assertThat(slices.resumeAt()).isZero();

        slices.finish();
        slices.restartClock();
        assertThat(slices.resumeAt()).isEqualTo(Completion.NEVER);
    }
}

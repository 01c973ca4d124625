package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StepBudgetTest {
    @Test
    void asking_spends_nothing() {
        var budget = new StepBudget(1);

        for (int i = 0; i < 10; i++) {
            assertThat(budget.isSpent()).isFalse();
        }
        budget.spend();
        assertThat(budget.isSpent()).isTrue();
    }

    @Test
    void may_be_refilled_whatever_was_left() {
        var budget = new StepBudget(0);
        assertThat(budget.isSpent()).isTrue();

        budget.refill(2);
        budget.spend();
        assertThat(budget.isSpent()).isFalse();
        budget.refill(1);
        budget.spend();
        assertThat(budget.isSpent()).isTrue();
    }

    /** A node counts for the part of a search that looks at it, and for the whole that the part belongs to. */
    @Test
    void a_part_spends_of_the_whole_too() {
        var whole = new StepBudget(3);
        var part = new StepBudget(2);
        Stop ofWhole = Stop.NEVER.within(whole);
        Stop ofPart = ofWhole.within(part);

        ofPart.spendNode();
        ofPart.spendNode();
        assertThat(ofPart.requested()).isTrue();
        assertThat(ofWhole.requested()).isFalse();

        part.refill(2);
        ofPart.spendNode();
        assertThat(part.isSpent()).isFalse();
        assertThat(ofPart.requested()).isTrue();
        assertThat(ofWhole.requested()).isTrue();
    }

    @Test
    void another_reason_stops_too_and_hides_nothing_that_is_spent() {
        var budget = new StepBudget(1);
        var reason = new boolean[1];
        Stop stop = Stop.NEVER.within(budget).or(() -> reason[0]);

        assertThat(stop.requested()).isFalse();
        reason[0] = true;
        assertThat(stop.requested()).isTrue();
        assertThat(budget.isSpent()).isFalse();
        reason[0] = false;
        stop.spendNode();
        assertThat(stop.requested()).isTrue();
    }
}

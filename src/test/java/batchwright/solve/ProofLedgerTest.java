package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.Watch;
import batchwright.solve.mip.StepBudget;
import org.junit.jupiter.api.Test;

class ProofLedgerTest {
    private final ProofLedger ledger = new ProofLedger();

    @Test
    void where_nothing_is_left_out_what_was_seen_is_proven() {
        assertThat(ledger.isComplete()).isTrue();
        assertThat(ledger.bound(5230)).isEqualTo(5230);
    }

    @Test
    void no_more_is_proven_than_the_least_that_was_left_out() {
        ledger.leaveOut(5100);
        ledger.leaveOut(4900);
        ledger.leaveOut(5000);

        assertThat(ledger.isComplete()).isFalse();
        assertThat(ledger.bound(5230)).isEqualTo(4900);
        assertThat(ledger.bound(4800)).isEqualTo(4800);
    }

    /** A part of the search leaves out of the whole; a side search only of itself. */
    @Test
    void a_side_search_has_a_ledger_of_its_own() {
        var whole = new Effort(new Meter(work -> false), Watch.NONE);

        whole.limited(10).ledger().leaveOut(1);
        whole.sideOfWork(10).ledger().leaveOut(1);
        whole.sideOfRelaxations(10).ledger().leaveOut(1);
        whole.steps(10, 10).ledger().leaveOut(1);
        assertThat(whole.ledger().isComplete()).isTrue();

        whole.within(new StepBudget(10)).ledger().leaveOut(2);
        assertThat(whole.ledger().bound(3)).isEqualTo(2);
    }
}

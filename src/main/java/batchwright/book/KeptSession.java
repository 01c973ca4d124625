package batchwright.book;

import batchwright.book.KeptPlan.KeptBatch;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A cooking session of a plan that was kept.
 *
 * @param day of the plan on which it cooks
 */
public record KeptSession(KeptPlan plan, int day) {
    public LocalDate date() {
        return plan.date(day);
    }

    public List<KeptBatch> batches() {
        return plan.batches().stream().filter(batch -> batch.day() == day).toList();
    }

    public Optional<KeptWork> work() {
        return plan.work().stream().filter(work -> work.day() == day).findFirst();
    }

    /** How many sessions there are from this one on. */
    public int sessionsLeft() {
        return (int) plan.batches().stream()
                .map(KeptBatch::day)
                .filter(first -> first >= day)
                .distinct()
                .count();
    }
}

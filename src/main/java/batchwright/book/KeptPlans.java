package batchwright.book;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** All plans that were kept. For a day the one that was made last holds: the latest cooking day, and of these the last kept. */
public record KeptPlans(List<KeptPlan> plans) {
    public KeptPlans {
        plans = plans.stream()
                .sorted(Comparator.comparing(KeptPlan::cookingDay)
                        .thenComparing(KeptPlan::number)
                        .reversed())
                .toList();
    }

    public Optional<KeptPlan> on(LocalDate date) {
        return plans.stream().filter(plan -> plan.covers(date)).findFirst();
    }

    /** The same, of an eater. */
    public Optional<KeptPlan> on(LocalDate date, String eater) {
        return plans.stream().filter(plan -> plan.on(date, eater).isPresent()).findFirst();
    }
}

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
                        .thenComparing(plan -> plan.kept().number())
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

    /**
     * The cooking session that is next, today's included; when none is to come, the last one of the plan that holds today.
     */
    public Optional<KeptSession> next(LocalDate today) {
        List<KeptSession> all = plans.stream()
                .flatMap(plan -> plan.batches().stream()
                        .map(KeptPlan.KeptBatch::day)
                        .distinct()
                        .map(day -> new KeptSession(plan, day)))
                .filter(session -> on(session.date()).filter(session.plan()::equals).isPresent())
                .sorted(Comparator.comparing(KeptSession::date))
                .toList();
        return all.stream()
                .filter(session -> !session.date().isBefore(today))
                .findFirst()
                .or(() -> all.stream()
                        .filter(session -> session.plan().covers(today))
                        .reduce((earlier, later) -> later));
    }

    /** By its key. */
    public Optional<KeptPlan> of(String key) {
        return plans.stream().filter(plan -> plan.key().equals(key)).findFirst();
    }
}

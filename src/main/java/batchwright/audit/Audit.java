package batchwright.audit;

import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import java.util.List;
import java.util.stream.Stream;

/**
 * Recomputes a plan from the files. It takes from the plan only what was decided (containers, raw grams, counts, packs) and
 * works out everything else again, from the files' own foods, recipes, measures, prices and pantry; then it looks whether
 * every rule holds and whether every number that gets printed is the recomputed one. It shares no arithmetic with the
 * planner nor with the plan's own sums, so that one slip cannot hide another.
 */
public final class Audit {
    private static final List<Inspection> BESIDES_LIMITS = List.of(
            new ContainersADay(),
            new MealsKept(),
            new PartRange(),
            new DishCount(),
            new HandsOnMinutes(),
            new SnackLimits(),
            new SnackPairs(),
            new Keeping(),
            new Avoid(),
            new Stock(),
            new OneKind(),
            new UseBy(),
            new Budget(),
            new AlwaysEaten(),
            new EatersAndDays(),
            new NamesInTheFiles(),
            new DayTotals(),
            new AverageDay(),
            new ContainerContents(),
            new BatchIngredients(),
            new CookedWeights(),
            new ShoppingList(),
            new Cost());

    private Audit() {}

    /**
     * Of each session, one check for each rule, under the name it has in clashes, and then one for each kind of printed number. Of
     * several, what joins them comes first.
     */
    public static AuditReport of(PlanRequest request, Plan plan) {
        return request.cooking().sessions() == 1 && plan.isCookedOnce() ? once(request, plan) : several(request, plan);
    }

    /** What the session says that it is planned for has no check of its own, unless that is not what was asked for. */
    private static AuditReport once(PlanRequest request, Plan plan) {
        Evidence evidence = Evidence.of(request, plan.first().withProof(plan.proof()));
        Stream<AuditReport.Check> misstated = new JoinedSessions(request, plan, List.of(evidence))
                .stated().stream().filter(check -> !check.passed());
        return new AuditReport(
                Stream.concat(session(evidence).checks().stream(), misstated).toList());
    }

    private static AuditReport several(PlanRequest request, Plan plan) {
        List<Evidence> evidence = plan.sessions().stream()
                .map(session -> Evidence.of(session.request(), session))
                .toList();
        var joined = new JoinedSessions(request, plan, evidence);
        return AuditReport.of(
                Stream.concat(joined.stated().stream(), joined.together().stream())
                        .toList(),
                evidence.stream().map(Audit::session).toList());
    }

    private static AuditReport session(Evidence evidence) {
        return new AuditReport(Stream.of(LimitKept.all(evidence.request().seats()), BESIDES_LIMITS)
                .flatMap(List::stream)
                .map(inspection -> check(inspection, evidence))
                .toList());
    }

    static AuditReport.Check check(Inspection inspection, Evidence evidence) {
        var findings = new Findings();
        inspection.inspect(evidence, findings);
        return findings.asCheck(inspection.name());
    }
}

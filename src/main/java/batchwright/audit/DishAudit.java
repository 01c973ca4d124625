package batchwright.audit;

import batchwright.plan.DishRequest;
import batchwright.plan.Plan;
import java.util.List;
import java.util.stream.Stream;

/** Recomputes containers of one dish from the files, by the inspections that {@link Audit} has for batches and shopping. */
public final class DishAudit {
    private static final List<Inspection> AS_IN_A_PLAN = List.of(
            new PartRange(),
            new Stock(),
            new OneKind(),
            new Budget(),
            new NamesInTheFiles(),
            new ContainerContents(),
            new BatchIngredients(),
            new CookedWeights(),
            new ShoppingList(),
            new Cost());

    private DishAudit() {}

    /** One check for each rule and for each kind of printed number. */
    public static AuditReport of(DishRequest request, Plan plan) {
        Evidence evidence = Evidence.of(request.forNobody(), plan.first());
        return new AuditReport(Stream.concat(
                        Stream.of(new ContainersAsked(request), new ContainerAsked(request)), AS_IN_A_PLAN.stream())
                .map(inspection -> Audit.check(inspection, evidence))
                .toList());
    }
}

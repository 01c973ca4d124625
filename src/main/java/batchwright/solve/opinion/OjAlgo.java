package batchwright.solve.opinion;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.SecondOpinion;
import batchwright.plan.SecondOpinion.Verdict;
import batchwright.quantity.Money;
import batchwright.solve.mip.MipModel;
import batchwright.solve.opinion.OjAlgoModel.Answer;
import batchwright.solve.opinion.OjAlgoModel.Says;
import batchwright.solve.whole.WholeModel;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * ojAlgo on the whole model, in two steps that share the time: the model of the plan's own dishes, all columns whole; then the
 * relaxation of the model of all dishes, whose multipliers prove a bound. Without a plan there is only the first, of all dishes.
 *
 * <p>ojAlgo at times calls a model impossible that has a solution, or a dear point the best. So nothing that it says counts as a
 * contradiction but a point that keeps every row and costs less than what is proven, or a proven bound above the plan's cost.
 */
public final class OjAlgo {
    /** What a bound may be above a whole cent by rounding. */
    private static final double CENT = 1e-6;

    /**
     * Takes as long as the request's patience.
     *
     * @param plan the planner's best; empty when it says that there is none
     * @param proof what the planner says is proven
     */
    public SecondOpinion of(PlanRequest request, Optional<Plan> plan, Proof proof) {
        long start = System.nanoTime();
        Duration patience = request.patience();
        PlanRequest narrow = plan.map(p -> request.withKitchen(cooking(p, request.kitchen())))
                .orElse(request);
        MipModel model = WholeModel.of(narrow).model();
        var solver = new OjAlgoModel(model);
        Answer answer = solver.solve(plan.isPresent() ? patience.dividedBy(2) : patience);
        Optional<Money> found = solver.keepsEveryRow(answer.values())
                ? Optional.of(new Money(Math.round(model.costOf(answer.values()))))
                : Optional.empty();
        Optional<Money> bound =
                plan.isPresent() ? bound(request, patience.minusNanos(System.nanoTime() - start)) : Optional.empty();
        Optional<Money> sameDishes = answer.says() == Says.OPTIMAL && plan.isPresent() ? found : Optional.empty();
        return new SecondOpinion(
                "ojAlgo",
                plan.isPresent() ? ofAPlan(plan.get(), proof, sameDishes, found, bound) : ofNone(answer.says(), found),
                sameDishes,
                found,
                bound);
    }

    private static Verdict ofAPlan(
            Plan plan, Proof proof, Optional<Money> sameDishes, Optional<Money> found, Optional<Money> bound) {
        boolean cheaperThanProven =
                found.filter(cost -> cost.compareTo(proof.lowerBound()) < 0).isPresent();
        boolean boundAbove =
                bound.filter(least -> least.compareTo(plan.cost()) > 0).isPresent();
        if (cheaperThanProven || boundAbove) {
            return Verdict.DISAGREES;
        }
        return sameDishes.filter(plan.cost()::equals).isPresent() ? Verdict.AGREES : Verdict.NOT_FINISHED;
    }

    private static Verdict ofNone(Says says, Optional<Money> found) {
        if (found.isPresent()) {
            return Verdict.DISAGREES;
        }
        return says == Says.IMPOSSIBLE ? Verdict.AGREES : Verdict.NOT_FINISHED;
    }

    private static Optional<Money> bound(PlanRequest request, Duration within) {
        if (within.isNegative() || within.isZero()) {
            return Optional.empty();
        }
        MipModel model = WholeModel.of(request).model();
        Answer answer = new OjAlgoModel(model).relaxation(within);
        double least = WeakDuality.bound(model, answer.multipliers());
        return least > 0 ? Optional.of(new Money((long) Math.ceil(least - CENT))) : Optional.empty();
    }

    private static Kitchen cooking(Plan plan, Kitchen kitchen) {
        Map<String, Dish> dishes = new LinkedHashMap<>();
        plan.batches().stream().map(Batch::dish).forEach(dish -> dishes.put(dish.id(), dish));
        return kitchen.withDishes(dishes);
    }
}

package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.List;

/** Puts the meals of all into one session: a batch for each dish, nothing bought yet. */
final class OnePot {
    private OnePot() {}

    static Session of(PlanRequest request, List<MealsOfOne> meals) {
        List<Batch> batches = new ArrayList<>();
        for (Dish dish : request.kitchen().dishes().values()) {
            List<Fill> fills = meals.stream()
                    .flatMap(one -> one.batches().stream())
                    .filter(batch -> batch.dish().equals(dish))
                    .flatMap(batch -> batch.fills().stream())
                    .toList();
            if (!fills.isEmpty()) {
                batches.add(AsWritten.batch(dish, fills));
            }
        }
        List<EaterDays> eaters = meals.stream().map(one -> days(request, one)).toList();
        return new Session(1, request, eaters, batches, List.of(), Proof.NONE);
    }

    private static EaterDays days(PlanRequest request, MealsOfOne meals) {
        return new EaterDays(
                meals.seat(),
                meals.days().days().stream()
                        .map(day -> new Day(
                                day.day(),
                                day.servings().stream()
                                        .map(s -> new Serving(
                                                request.kitchen()
                                                        .dishes()
                                                        .getOrDefault(s.dish().id(), s.dish()),
                                                s.count(),
                                                s.from()))
                                        .toList(),
                                day.snacks(),
                                day.always()))
                        .toList());
    }
}

package batchwright.solve.whole;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Handled;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.schedule.Schedule;
import batchwright.solve.BatchPlanner;
import batchwright.solve.Outcome;
import batchwright.solve.RandomProblems;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Random small kitchens whose dishes have random laws, at most so many minutes hands on: the same cost as outside solvers find. */
class HandsOnLimitTest {
    private static final long SEEDS = Long.getLong("batchwright.seeds", 60);

    /** Nobody proves this one in a minute. */
    private static final Set<Long> SLOW = Set.of(31L);

    @Test
    void limited_plans_cost_what_outside_solvers_find() {
        List<String> differences = new ArrayList<>();
        int dearer = 0;
        int none = 0;
        int same = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            if (SLOW.contains(seed)) {
                continue;
            }
            var random = new Random(seed);
            PlanRequest free = withLaws(RandomProblems.of(seed), random);
            Optional<Plan> cheapest = new BatchPlanner().plan(free).best();
            if (cheapest.isEmpty()) {
                continue;
            }
            int hands = hands(cheapest.get(), free.kitchen());
            PlanRequest limited = atMost(free, hands - random.nextInt(12));
            PlanResult result = new BatchPlanner().plan(limited);
            result.best()
                    .ifPresent(plan ->
                            assertThat(Audit.of(limited, plan).failures()).isEmpty());
            differences.addAll(CrossSolverTest.differences("seed " + seed, Outcome.of(result), limited));
            assertThat(WholeModel.of(limited).names()).contains("hands-on minutes: all of them");
            Optional<Plan> plan = result.best();
            none += plan.isEmpty() ? 1 : 0;
            boolean costsMore = plan.filter(
                            p -> p.cost().compareTo(cheapest.get().cost()) > 0)
                    .isPresent();
            dearer += costsMore ? 1 : 0;
            same += plan.isPresent() && !costsMore ? 1 : 0;
        }

        assertThat(differences).isEmpty();
        assertThat(List.of(none, dearer, same))
                .as("without a plan, dearer, at the same cost")
                .doesNotContain(0);
    }

    private static int hands(Plan plan, Kitchen kitchen) {
        return Schedule.of(plan.batches(), kitchen.equipment()).handsOnMinutes();
    }

    private static PlanRequest atMost(PlanRequest request, int minutes) {
        Kitchen kitchen = request.kitchen();
        return request.withKitchen(
                kitchen.with(kitchen.equipment().withHandsOnMinutes(OptionalInt.of(Math.max(1, minutes)))));
    }

    private static PlanRequest withLaws(PlanRequest request, Random random) {
        Map<String, Dish> dishes = new LinkedHashMap<>();
        request.kitchen()
                .dishes()
                .forEach((id, d) -> dishes.put(
                        id,
                        new Dish(
                                d.id(),
                                d.name(),
                                d.kind(),
                                d.fridgeDays(),
                                d.freezes(),
                                d.reheat(),
                                d.parts(),
                                d.staples(),
                                steps(d, random))));
        return request.withKitchen(request.kitchen().withDishes(dishes));
    }

    /** A step for each part, by one or two laws; sometimes minutes for five containers; sometimes one that fills. */
    private static List<Step> steps(Dish dish, Random random) {
        List<Step> steps = new ArrayList<>();
        boolean forFive = random.nextInt(5) == 0;
        for (Part part : dish.parts()) {
            List<TimeLaw> laws = new ArrayList<>();
            if (forFive) {
                laws.add(new TimeLaw.ForFive(10, 1 + random.nextInt(9)));
            } else {
                Handled what =
                        new Handled.OfFood(part.mix().get(0).food(), Optional.of(part.name()), new BigDecimal("0.5"));
                laws.add(new TimeLaw.HandWork(random.nextInt(3), Map.of(what, 1 + 20 * random.nextDouble())));
                if (random.nextBoolean()) {
                    laws.add(new TimeLaw.Loads(
                            random.nextInt(4),
                            1 + random.nextInt(8),
                            50 + random.nextInt(400),
                            List.of(new Handled.OfPart(part.name()))));
                }
            }
            steps.add(step(laws, part.optional() ? List.of(part.name()) : List.of(), false));
        }
        if (random.nextBoolean()) {
            steps.add(step(forFive ? List.of(new TimeLaw.ForFive(5, 5)) : List.of(), List.of(), true));
        }
        return steps;
    }

    private static Step step(List<TimeLaw> laws, List<String> parts, boolean fills) {
        Optional<Appliance> on = fills ? Optional.empty() : Optional.of(Appliance.BURNER);
        return new Step(
                "Work.",
                List.of(new Way(on, OptionalInt.empty(), 1, laws, Optional.empty())),
                List.of(),
                List.of(),
                fills,
                false,
                parts);
    }
}

package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Variety;
import batchwright.plan.left.LeftContainers;
import batchwright.plan.left.LeftDish;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The planner's answer to small random requests is what plain enumeration finds, to the cent; and its plan passes audit. */
class PlannerBruteForceTest {
    /** -Dbatchwright.seeds=3000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 200);

    static LongStream seeds() {
        return LongStream.range(0, SEEDS);
    }

    /** Those that were once answered wrongly come first. */
    static LongStream knownAndOtherSeeds() {
        return LongStream.concat(
                LongStream.of(209, 558, 799, 996, 1237, 1336, 1669, 1724, 1856, 2069, 2323, 2420, 2923), seeds());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("knownAndOtherSeeds")
    void costs_what_enumeration_finds(long seed) {
        agrees(RandomProblems.of(seed));
    }

    /** The same with loose goods and multipacks in the shop, and with dates in the pantry. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds_with_loose_goods_and_dates(long seed) {
        agrees(RandomShop.of(seed));
    }

    /** A dish that is asked for is cooked, whatever it costs; each dish of the kitchen in turn, offered to anybody or not. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void costs_what_enumeration_finds_when_a_dish_is_asked_for(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        var dishes = List.copyOf(request.kitchen().dishes().values());
        agrees(request.withMustCook(Set.of(dishes.get((int) (seed % dishes.size())))));
    }

    /** At least two dishes, and the cheapest plan's dishes were cooked last time. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void costs_what_enumeration_finds_with_other_dishes_than_last_time(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        var lastTime = new BatchPlanner()
                .plan(request).best().stream()
                        .flatMap(plan -> plan.first().batches().stream())
                        .map(batch -> batch.dish())
                        .collect(Collectors.toSet());
        agrees(request.withVariety(new Variety(1 + (int) (seed % 3), lastTime)));
    }

    /** What the first eater has on the first day of a plan is left; on even seeds it stays on that day, and on odd ones it may go. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void costs_what_enumeration_finds_with_containers_from_before(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        new BatchPlanner().plan(request).best().ifPresent(plan -> agrees(request.withLeft(left(plan, seed % 2 == 0))));
    }

    /** What the first eater has on the first day is left and for everybody: some, all or nothing of it is eaten. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void costs_what_enumeration_finds_with_containers_that_are_offered(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Set<String> all =
                request.seats().stream().map(seat -> seat.eater().id()).collect(Collectors.toSet());
        new BatchPlanner().plan(request).best().ifPresent(plan -> {
            var offered = left(plan, false).dishes().stream()
                    .map(left -> new LeftDish(
                            left.dish(), left.origin(), left.eater(), all, left.containers(), left.byDay()))
                    .toList();
            agrees(request.withLeft(new LeftContainers(offered)));
        });
    }

    /** Once answered with "no plan": totals that were whole but for the precision of the relaxation were dropped. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void totals_within_the_precision_of_the_relaxation_are_not_dropped(boolean stays) {
        PlanRequest request = RandomProblems.of(50_074);
        var dishes = request.kitchen().dishes();
        Set<Dish> cooked = Stream.of("dish0", "dish1", "dish2")
                .map(dishes::get)
                .map(Objects::requireNonNull)
                .collect(Collectors.toSet());
        Plan plan = new BatchPlanner().plan(request.withMustCook(cooked)).best().orElseThrow();

        agrees(request.withLeft(left(plan, stays)));
    }

    private static LeftContainers left(Plan plan, boolean stays) {
        EaterDays first = plan.eaters().get(0);
        var eater = first.seat().eater();
        return new LeftContainers(first.days().get(0).servings().stream()
                .map(serving -> new LeftDish(
                        LeftDish.dish(
                                serving.dish().id() + " (left)",
                                serving.dish(),
                                Set.of(),
                                100,
                                whole(plan.first().fill(serving.dish(), eater).perContainer()),
                                serving.dish().fridgeDays()),
                        serving.dish().id(),
                        eater.id(),
                        serving.count(),
                        stays ? Map.of(1, serving.count()) : Map.of()))
                .toList());
    }

    /** In whole units: enumeration counts in whole parts of them. */
    private static Nutrients whole(Nutrients holds) {
        Map<Nutrient, BigDecimal> rounded = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            if (holds.isComplete(nutrient)) {
                rounded.put(nutrient, holds.get(nutrient).setScale(0, RoundingMode.HALF_UP));
            }
        }
        return Nutrients.of(rounded);
    }

    private static void agrees(PlanRequest request) {
        PlanResult result = new BatchPlanner().plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(BruteForce.leastCost(request)));
        result.best().ifPresent(plan -> {
            assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed);
            assertThat(plan.proof().provenCheapest()).isTrue();
        });
    }

    static LongStream fewerSeeds() {
        return LongStream.range(50_000, 50_000 + SEEDS / 2);
    }

    /** The energy and fat that dishes lose when fat is poured off count for the planner, the enumeration and the audit alike. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void costs_what_enumeration_finds_when_fat_is_poured_off(long seed) {
        PlanRequest request = Variants.fatPouredOff(RandomProblems.of(seed), seed);

        PlanResult result = new BatchPlanner().plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(BruteForce.leastCost(request)));
        result.best()
                .ifPresent(plan -> assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed));
    }

    /** The plans of the test above must pour off fat, or it says nothing. */
    @Test
    void fat_is_poured_off_in_many_of_these_plans() {
        long poured = fewerSeeds()
                .mapToObj(seed -> Variants.fatPouredOff(RandomProblems.of(seed), seed))
                .map(request -> new BatchPlanner().plan(request).best())
                .flatMap(Optional::stream)
                .filter(plan ->
                        plan.batches().stream().anyMatch(b -> !b.fatToPourOff().isEmpty()))
                .count();

        assertThat(poured).isGreaterThan(SEEDS / 10);
    }

    /** Requests without a plan say little; most of them must have one. */
    @Test
    void most_of_the_requests_have_a_plan() {
        long planned = seeds().mapToObj(RandomProblems::of)
                .map(BruteForce::leastCost)
                .filter(OptionalLong::isPresent)
                .count();

        assertThat(planned).isBetween(SEEDS / 2, SEEDS - SEEDS / 10);
    }
}

package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Pack;
import batchwright.food.Shops;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.quantity.Money;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two shops, and trips that cost: the planner's answer to small random requests is the cheapest that plain enumeration finds over all sets
 * of shops, to the cent; and its plan passes audit.
 */
class TripsBruteForceTest {
    private static final List<Set<String>> SHOPS =
            List.of(Set.of(), Set.of("near"), Set.of("far"), Set.of("near", "far"));

    /** -Dbatchwright.seeds=1000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 50);

    static LongStream seeds() {
        return LongStream.range(110_000, 110_000 + SEEDS);
    }

    private static PlanRequest request(long seed) {
        var random = new Random(seed);
        PlanRequest request = RandomProblems.of(seed);
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        request.kitchen()
                .packs()
                .forEach((food, sold) -> packs.put(
                        food, sold.stream().flatMap(pack -> sold(pack, random)).toList()));
        var trip = new Money(1 + random.nextInt(300));
        return request.withKitchen(request.kitchen().withPacks(packs).with(new Shops(trip, Map.of())));
    }

    /** A pack in one shop, and perhaps the same at another price in the other. */
    private static Stream<Pack> sold(Pack pack, Random random) {
        Pack near = at(pack, "near", pack.price());
        Pack far = at(pack, "far", new Money(1 + pack.price().minor() * (60 + random.nextInt(60)) / 100));
        return switch (random.nextInt(4)) {
            case 0 -> Stream.of(near);
            case 1 -> Stream.of(far);
            default -> Stream.of(near, far);
        };
    }

    private static Pack at(Pack p, String shop, Money price) {
        return new Pack(p.food(), shop, p.label(), p.contents(), price, p.loose(), p.seen(), p.note());
    }

    private static OptionalLong leastCost(PlanRequest request) {
        long trip = request.kitchen().shops().trip().minor();
        return SHOPS.stream()
                .flatMapToLong(shops -> costAt(request, shops).map(cost -> cost + trip * shops.size()).stream()
                        .mapToLong(Long::longValue))
                .filter(cost -> request.budget().map(b -> cost <= b.minor()).orElse(true))
                .min();
    }

    private static Optional<Long> costAt(PlanRequest request, Set<String> shops) {
        Kitchen kitchen = request.kitchen().onlyAt(shops::contains).with(Shops.FREE);
        OptionalLong cost =
                BruteForce.leastCost(request.withBudget(Optional.empty()).withKitchen(kitchen));
        return cost.isPresent() ? Optional.of(cost.getAsLong()) : Optional.empty();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds(long seed) {
        PlanRequest request = request(seed);

        PlanResult result = new BatchPlanner().plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(leastCost(request)));
        result.best()
                .ifPresent(plan -> assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed));
    }

    /** Trips that change nothing say nothing. */
    @Test
    void in_many_plans_a_trip_is_saved() {
        long saved = seeds().filter(seed -> {
                    PlanRequest request = request(seed);
                    Kitchen free = request.kitchen().with(Shops.FREE);
                    Optional<Plan> plan = new BatchPlanner().plan(request).best();
                    Optional<Plan> whenFree =
                            new BatchPlanner().plan(request.withKitchen(free)).best();
                    return plan.isPresent()
                            && plan.get().first().shopsVisited().size()
                                    < whenFree.orElseThrow()
                                            .first()
                                            .shopsVisited()
                                            .size();
                })
                .count();

        assertThat(saved).isGreaterThan(SEEDS / 10);
    }
}

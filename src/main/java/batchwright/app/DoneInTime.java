package batchwright.app;

import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.Kitchen;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.schedule.Schedule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Keeps the limit on the time of a cooking session, which only the order of work knows. If that of the cheapest plan without the limit
 * ends in time, it is the cheapest plan of all. If not, the planner is asked to keep what follows from the limit for the hands; and if
 * even its plan takes too long, plans are tried without the dish that takes too long by itself and with less and less work for the
 * hands. The first of these that ends in time is not proven cheapest; its bound is that of the first two searches.
 */
record DoneInTime(Planner planner) implements Planner {
    /** Each takes its share of the time. */
    private static final int TRIES = 8;

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        OptionalInt within = request.kitchen().equipment().limits().doneWithinMinutes();
        if (within.isEmpty()) {
            return planner.plan(request, watch);
        }
        Deadline deadline = Deadline.in(request.patience());
        PlanResult anyTime =
                planner.plan(unlimited(request).withPatience(request.patience().dividedBy(2)), watch);
        if (anyTime.best().isEmpty() || endInTime(anyTime, within)) {
            return asked(request, anyTime);
        }
        PlanResult first = planner.plan(request.withPatience(deadline.left().dividedBy(2)), new Watch.StopOnly(watch));
        if (first instanceof PlanResult.NoPlan || endInTime(first, within)) {
            return first;
        }
        Optional<Plan> best = Stream.concat(first.plans().stream(), anyTime.plans().stream())
                .filter(plan -> ends(plan, within))
                .findFirst()
                .or(() -> quicker(
                        request, first.best().or(anyTime::best).orElseThrow(), within.getAsInt(), deadline, watch));
        Proof proof = atLeast(anyTime.proof().lowerBound(), first.proof());
        return asked(request, new PlanResult.GaveUp(best.map(plan -> withProof(plan, proof)), proof));
    }

    private static PlanRequest unlimited(PlanRequest request) {
        Kitchen kitchen = request.kitchen();
        return request.withKitchen(kitchen.with(kitchen.equipment().withDoneWithinMinutes(OptionalInt.empty())));
    }

    private static boolean endInTime(PlanResult result, OptionalInt within) {
        return result.best().filter(plan -> ends(plan, within)).isPresent();
    }

    /** As the answer to what was asked. */
    private static PlanResult asked(PlanRequest request, PlanResult result) {
        return result.match(new PlanResult.Cases<>() {
            @Override
            public PlanResult planned(PlanResult.Planned planned) {
                return new PlanResult.Planned(
                        Plan.of(planned.plan().first().withRequest(request).withProof(planned.proof())));
            }

            @Override
            public PlanResult noPlan(PlanResult.NoPlan none) {
                return none;
            }

            @Override
            public PlanResult gaveUp(PlanResult.GaveUp gaveUp) {
                return new PlanResult.GaveUp(
                        gaveUp.best()
                                .map(plan -> Plan.of(
                                        plan.first().withRequest(request).withProof(plan.proof()))),
                        gaveUp.proof());
            }
        });
    }

    private static Plan withProof(Plan plan, Proof proof) {
        return Plan.of(plan.first().withProof(proof.of(plan.cost())));
    }

    private static Proof atLeast(Money bound, Proof proof) {
        return bound.compareTo(proof.lowerBound()) > 0
                ? new Proof(proof.cost(), bound, proof.nodes(), proof.took(), proof.interrupted(), proof.closeEnough())
                : proof;
    }

    private static boolean ends(Plan plan, OptionalInt within) {
        return minutes(plan.batches(), plan.first().kitchen().equipment()) <= within.orElseThrow();
    }

    private static int minutes(List<Batch> batches, Equipment equipment) {
        return Schedule.of(batches, equipment).minutes();
    }

    /** Without the dishes that take too long by themselves, as long as there is a plan without them; then with less work for the hands. */
    private Optional<Plan> quicker(PlanRequest request, Plan tooSlow, int within, Deadline deadline, Watch watch) {
        Plan slow = tooSlow;
        PlanRequest asked = request;
        boolean leavesOut = true;
        for (int left = TRIES; left > 0 && !watch.stop(); left--) {
            Optional<PlanRequest> without = leavesOut ? withoutSlowDishes(asked, slow, within) : Optional.empty();
            PlanRequest next = without.orElse(withLessForTheHands(asked, slow, within));
            Optional<Plan> plan = planner.plan(
                            next.withPatience(deadline.left().dividedBy(left)), new Watch.StopOnly(watch))
                    .best();
            if (plan.isPresent()) {
                if (ends(plan.get(), OptionalInt.of(within))) {
                    return plan;
                }
                asked = next;
                slow = plan.get();
            } else if (without.isPresent()) {
                leavesOut = false;
            } else {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static Optional<PlanRequest> withoutSlowDishes(PlanRequest request, Plan slow, int within) {
        Kitchen kitchen = request.kitchen();
        Map<String, Dish> dishes = new LinkedHashMap<>(kitchen.dishes());
        for (Batch batch : slow.batches()) {
            if (!request.mustCook().contains(batch.dish()) && minutes(List.of(batch), kitchen.equipment()) > within) {
                dishes.remove(batch.dish().id());
            }
        }
        return dishes.size() < kitchen.dishes().size()
                ? Optional.of(request.withKitchen(kitchen.withDishes(dishes)))
                : Optional.empty();
    }

    private static PlanRequest withLessForTheHands(PlanRequest request, Plan slow, int within) {
        Kitchen kitchen = request.kitchen();
        Equipment equipment = kitchen.equipment();
        Schedule schedule = Schedule.of(slow.batches(), equipment);
        int most = Math.max(0, schedule.handsOnMinutes() - (schedule.minutes() - within));
        return request.withKitchen(kitchen.with(equipment.withHandsOnMinutes(OptionalInt.of(most))));
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    /** What the hands can do in time may still not be done in time: then a plan has to show it. */
    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        Possible possible = planner.possible(request, watch);
        if (possible != Possible.YES
                || request.kitchen().equipment().limits().doneWithinMinutes().isEmpty()) {
            return possible;
        }
        return plan(request, new Watch.StopOnly(watch)).best().isPresent() ? Possible.YES : Possible.UNKNOWN;
    }
}

package batchwright.audit.proof;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Variety;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether parts of a proof together hold every set of dishes that may be cooked. */
final class DishSetCover {
    /** A list that takes more looking through than this is not one of a search. */
    private static final long MOST_STEPS = 1_000_000;

    private final PlanRequest request;
    private final Set<String> dishes;
    private final Set<String> asked;
    private final Set<String> lastTime;
    private long steps;

    DishSetCover(PlanRequest request) {
        this.request = request;
        this.dishes = TotalsOfDishes.dishes(request);
        this.asked = ids(request.mustCook());
        this.lastTime = ids(request.variety().lastTime());
    }

    private static Set<String> ids(Set<Dish> dishes) {
        return dishes.stream().map(Dish::id).collect(Collectors.toSet());
    }

    /** A set of dishes that may be cooked and is in no part; empty when there is none. */
    Optional<Set<String>> missing(List<PlanProof.Part> parts) {
        return missing(parts, Set.of(), Set.of());
    }

    /** Among the sets with all dishes of {@code in} and none of {@code out}. */
    private Optional<Set<String>> missing(List<PlanProof.Part> parts, Set<String> in, Set<String> out) {
        if (steps++ > MOST_STEPS || !someAllowed(in, out)) {
            return steps > MOST_STEPS ? Optional.of(in) : Optional.empty();
        }
        Set<String> possible = new HashSet<>(dishes);
        possible.removeAll(out);
        if (in.size() == request.mostDishes()) {
            possible.retainAll(in);
        }
        List<PlanProof.Part> near = parts.stream()
                .filter(part ->
                        possible.containsAll(part.with()) && part.among().containsAll(in))
                .toList();
        for (PlanProof.Part part : near) {
            if (in.containsAll(part.with()) && part.among().containsAll(possible)) {
                return Optional.empty();
            }
        }
        Optional<String> next = near.stream()
                .flatMap(part -> possible.stream()
                        .filter(dish -> !in.contains(dish))
                        .filter(dish ->
                                part.with().contains(dish) || !part.among().contains(dish)))
                .sorted()
                .findFirst();
        if (next.isEmpty()) {
            return Optional.of(in);
        }
        return missing(near, plus(in, next.get()), out).or(() -> missing(near, in, plus(out, next.get())));
    }

    private static Set<String> plus(Set<String> some, String one) {
        Set<String> more = new HashSet<>(some);
        more.add(one);
        return more;
    }

    private boolean someAllowed(Set<String> in, Set<String> out) {
        Set<String> free = new HashSet<>(dishes);
        free.removeAll(out);
        free.removeAll(in);
        Set<String> again = new HashSet<>(lastTime);
        again.retainAll(in);
        Set<String> still = new HashSet<>(asked);
        still.removeAll(in);
        return in.size() + still.size() <= request.mostDishes()
                && in.size() + free.size() >= request.variety().leastDishes()
                && again.size() <= Variety.MOST_AGAIN
                && free.containsAll(still);
    }
}

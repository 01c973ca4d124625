package batchwright.app.desk;

import batchwright.answer.PlanAnswer;
import batchwright.audit.Audit;
import batchwright.food.Dish;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a desk found and proved before. Requests here have no budget: what is cheapest does not depend on it. */
final class Memory {
    private static final int MOST = 200;
    private static final int MOST_DISHES = 6;

    /** The newest first. */
    private final Deque<Known> answers = new ArrayDeque<>();

    private Optional<Plan> newest = Optional.empty();

    /**
     * An answer.
     *
     * @param plan the best that is known; dearer than the budget perhaps
     * @param bound no plan costs less
     */
    private record Known(PlanRequest request, Optional<Plan> plan, Money bound) {
        /** Whether an older answer to the same is of no more use. */
        private boolean saysAsMuchAs(Known older) {
            return bound.compareTo(older.bound) >= 0
                    && older.plan
                            .map(theirs -> plan.filter(mine -> mine.cost().compareTo(theirs.cost()) <= 0)
                                    .isPresent())
                            .orElse(true)
                    && Stricter.isAtLeastAs(request, older.request)
                    && Stricter.isAtLeastAs(older.request, request);
        }
    }

    /** @param seen whether somebody saw the answer, and not only what a search had when it was ended for a newer one */
    synchronized void keep(PlanRequest request, PlanAnswer answer, boolean seen) {
        newest = answer.plan().filter(plan -> seen).or(() -> newest);
        var known = new Known(
                request.withBudget(Optional.empty()),
                answer.plan(),
                answer.proof().lowerBound());
        answers.removeIf(known::saysAsMuchAs);
        answers.addFirst(known);
        if (answers.size() > MOST) {
            answers.removeLast();
        }
    }

    /** The session of the plan that was shown last. */
    synchronized Optional<Session> newest(PlanRequest request) {
        return newest.flatMap(plan -> session(plan, request));
    }

    /** Dishes of the newest answers. */
    synchronized Set<Dish> dishes() {
        Set<Dish> dishes = new LinkedHashSet<>();
        answers.stream()
                .flatMap(known -> known.plan().stream())
                .flatMap(plan -> plan.batches().stream())
                .map(Batch::dish)
                .distinct()
                .limit(MOST_DISHES)
                .forEach(dishes::add);
        return dishes;
    }

    /** The cheapest plan known that keeps the rules of a request: made for stricter rules, or the newest, by luck. */
    synchronized Optional<Plan> kept(PlanRequest request) {
        List<Session> candidates = new ArrayList<>(newest(request).stream().toList());
        answers.stream()
                .filter(known -> known.plan().isPresent() && Stricter.isAtLeastAs(known.request(), request))
                .flatMap(known -> known.plan().flatMap(plan -> session(plan, request)).stream())
                .min(Comparator.comparing(Session::cost))
                .ifPresent(candidates::add);
        return candidates.stream()
                .sorted(Comparator.comparing(Session::cost))
                .flatMap(session -> seated(session, request).stream())
                .filter(plan -> Audit.of(request, plan).passed())
                .findFirst();
    }

    private static Optional<Session> session(Plan plan, PlanRequest request) {
        return plan.sessions().stream()
                .filter(session -> session.cookingDay().equals(request.kitchen().cookingDay()))
                .findFirst();
    }

    /** A session with the eaters of a request in place of what they were before; empty when others sit at the table. */
    private static Optional<Plan> seated(Session session, PlanRequest request) {
        List<EaterDays> eaters = new ArrayList<>();
        for (Seat seat : request.seats()) {
            session.eaters().stream()
                    .filter(mine -> mine.seat().eater().equals(seat.eater()))
                    .forEach(mine -> eaters.add(new EaterDays(seat, mine.days())));
        }
        return eaters.size() == request.seats().size() && session.days() == request.days()
                ? Optional.of(
                        Plan.of(session.withFirstDay(1).withRequest(request).withEaters(eaters)))
                : Optional.empty();
    }

    /** No plan for a request costs less. */
    synchronized Money bound(PlanRequest request) {
        return answers.stream()
                .filter(known -> Stricter.isAtLeastAs(request, known.request()))
                .map(Known::bound)
                .max(Comparator.naturalOrder())
                .orElse(Money.ZERO);
    }
}

package batchwright.app.desk;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a desk found and proved before. */
final class Memory {
    private static final int MOST = 200;

    /** The newest first. */
    private final Deque<Known> answers = new ArrayDeque<>();

    private Optional<Plan> newest = Optional.empty();

    /**
     * An answer.
     *
     * @param plan the best that is known; dearer than the budget perhaps
     * @param bound no plan costs less
     */
    private record Known(PlanRequest request, Optional<Plan> plan, Money bound) {}

    /** @param seen whether somebody saw the answer, and not only what a search had when it was ended for a newer one */
    synchronized void keep(PlanRequest request, PlanAnswer answer, boolean seen) {
        newest = answer.plan().filter(plan -> seen).or(() -> newest);
        answers.addFirst(new Known(
                request.withBudget(Optional.empty()),
                answer.plan(),
                answer.proof().lowerBound()));
        if (answers.size() > MOST) {
            answers.removeLast();
        }
    }

    /** Plans to begin with: the newest, and the cheapest of those that surely keep the rules of a request. */
    synchronized List<Plan> plans(PlanRequest request) {
        Optional<Plan> cheapest = answers.stream()
                .filter(known -> known.plan().isPresent() && Stricter.isAtLeastAs(known.request(), request))
                .flatMap(known -> known.plan().stream())
                .min(Comparator.comparing(Plan::cost));
        return Stream.concat(
                        newest.stream(),
                        cheapest.filter(plan -> newest.filter(plan::equals).isEmpty()).stream())
                .flatMap(plan -> plan.sessions().stream())
                .filter(session -> session.cookingDay().equals(request.kitchen().cookingDay()))
                .map(Plan::of)
                .toList();
    }

    /** No plan for a request costs less, whatever its budget. */
    synchronized Money bound(PlanRequest request) {
        return answers.stream()
                .filter(known -> Stricter.isAtLeastAs(request, known.request()))
                .map(Known::bound)
                .max(Comparator.naturalOrder())
                .orElse(Money.ZERO);
    }
}

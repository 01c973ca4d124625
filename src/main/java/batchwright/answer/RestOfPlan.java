package batchwright.answer;

import batchwright.book.BoxesLeft;
import batchwright.book.Event.Boxes;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.Serving;
import batchwright.plan.left.LeftContainers;
import batchwright.plan.left.LeftDish;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The days of a kept plan that are still to come, and the containers that are there for them.
 *
 * @param planned what was planned for them so far, each with its day counted from the first of them
 * @param left containers that are eaten on them
 * @param guests what is set aside
 * @param over containers that nobody at the table can have on these days, or of which nobody knows what they hold
 * @param past containers past their last day
 * @param offers containers that have no place with their own eater and may be for another: what a plan leaves of them is over, too
 */
public record RestOfPlan(
        Stretch stretch,
        List<EatersDay> planned,
        LeftContainers left,
        List<ForGuest> guests,
        List<BoxesLeft.Lot> over,
        List<BoxesLeft.Lot> past,
        List<Offer> offers) {
    public RestOfPlan {
        offers = List.copyOf(offers);
        planned = List.copyOf(planned);
        guests = List.copyOf(guests);
        over = List.copyOf(over);
        past = List.copyOf(past);
    }

    /**
     * Which days.
     *
     * @param planOf the cooking day of the plan
     * @param first the first of them
     * @param keeps whether containers stay on the days they were planned for
     */
    public record Stretch(LocalDate planOf, LocalDate first, int days, boolean keeps) {}

    /** The same containers, to a search and in the book. */
    public record Offer(LeftDish dish, BoxesLeft.Lot lot) {}

    /** Containers of one eater that another has in a plan. */
    public record ToAnother(String dish, String of, String to, int count) {}

    /** What a plan gives to others than its own eaters. */
    public List<ToAnother> given(Plan plan) {
        return plan.eaters().stream()
                .flatMap(eater -> offers.stream()
                        .map(offer -> new ToAnother(
                                offer.dish().origin(),
                                offer.dish().eater(),
                                eater.seat().eater().id(),
                                count(eater, offer))))
                .filter(given -> given.count() > 0)
                .toList();
    }

    /** All that is in no plan. */
    public List<BoxesLeft.Lot> over(Optional<Plan> plan) {
        List<BoxesLeft.Lot> all = new ArrayList<>(over);
        for (Offer offer : offers) {
            int eaten = plan.map(Plan::eaters).orElse(List.of()).stream()
                    .mapToInt(eater -> count(eater, offer))
                    .sum();
            if (eaten < offer.lot().count()) {
                all.add(offer.lot().of(offer.lot().count() - eaten));
            }
        }
        return all;
    }

    private static int count(EaterDays eater, Offer offer) {
        return eater.days().stream()
                .flatMap(day -> day.servings().stream())
                .filter(serving -> serving.dish().equals(offer.dish().dish()))
                .mapToInt(Serving::count)
                .sum();
    }

    /** A container that somebody else eats. */
    public record ForGuest(LocalDate day, Boxes boxes) {}

    /**
     * How another plan differs.
     *
     * @param days of an eater that have other containers than before
     * @param containers that are on another day than before, or new
     */
    public record Changes(int days, int containers) {}

    /** How a plan for these days differs from what was planned so far; snacks are not looked at. */
    public Changes changes(Plan plan) {
        Map<String, Map<String, Integer>> now = new HashMap<>();
        plan.eaters()
                .forEach(eater -> eater.days()
                        .forEach(day -> day.servings()
                                .forEach(serving -> count(
                                        now,
                                        key(eater.seat().eater().id(), day.day()),
                                        left.origin(serving.dish()),
                                        serving.count()))));
        Map<String, Map<String, Integer>> before = new HashMap<>();
        planned.forEach(day ->
                day.boxes().forEach(box -> count(before, key(day.eater(), day.day()), box.dish(), box.count())));
        int days = 0;
        int containers = 0;
        for (var mine : now.entrySet()) {
            Map<String, Integer> old = before.getOrDefault(mine.getKey(), Map.of());
            days += mine.getValue().equals(old) ? 0 : 1;
            containers += mine.getValue().entrySet().stream()
                    .mapToInt(dish -> Math.max(0, dish.getValue() - old.getOrDefault(dish.getKey(), 0)))
                    .sum();
        }
        return new Changes(days, containers);
    }

    private static String key(String eater, int day) {
        return eater + " " + day;
    }

    private static void count(Map<String, Map<String, Integer>> days, String day, String dish, int containers) {
        days.computeIfAbsent(day, d -> new HashMap<>()).merge(dish, containers, Integer::sum);
    }
}

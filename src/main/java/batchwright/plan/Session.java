package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrients;
import batchwright.food.Pack;
import batchwright.person.Eater;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One cooking session: what to cook, eat and buy for the days up to the next one. Holds decisions only; every total is worked out from
 * them.
 *
 * @param firstDay the day of the plan on which it cooks, the first being 1
 * @param request its own days and its own kitchen: the cooking day, and what is at home then
 * @param eaters their days, counted from 1; empty when a dish is cooked for nobody in particular
 * @param proof speaks of this session alone
 * @param left containers from before that are eaten, once they were set apart from what is cooked
 */
public record Session(
        int firstDay,
        PlanRequest request,
        List<EaterDays> eaters,
        List<Batch> batches,
        List<Purchase> shopping,
        Proof proof,
        List<Batch> left) {
    public Session {
        eaters = List.copyOf(eaters);
        batches = List.copyOf(batches);
        shopping = List.copyOf(shopping);
        left = List.copyOf(left);
    }

    public Session(
            int firstDay,
            PlanRequest request,
            List<EaterDays> eaters,
            List<Batch> batches,
            List<Purchase> shopping,
            Proof proof) {
        this(firstDay, request, eaters, batches, shopping, proof, List.of());
    }

    /** With what is left from before apart from what is cooked and bought, to be shown. */
    public Session apart() {
        return new Session(
                firstDay,
                request,
                eaters,
                batches.stream()
                        .filter(batch -> !request.left().has(batch.dish()))
                        .toList(),
                shopping.stream()
                        .filter(line -> !request.left().has(line.food()))
                        .toList(),
                proof,
                batches.stream()
                        .filter(batch -> request.left().has(batch.dish()))
                        .toList());
    }

    public Kitchen kitchen() {
        return request.kitchen();
    }

    public LocalDate cookingDay() {
        return request.kitchen().cookingDay();
    }

    public int days() {
        return request.days();
    }

    /** The last day of the plan that it cooks for. */
    public int lastDay() {
        return firstDay + days() - 1;
    }

    /** What is paid at the checkouts, and the trips to the shops. */
    public Money cost() {
        return shopping.stream().map(Purchase::cost).reduce(trips(), Money::plus);
    }

    /** Shops that something is bought in. */
    public Set<String> shopsVisited() {
        return shopping.stream()
                .flatMap(purchase -> purchase.packs().keySet().stream())
                .map(Pack::shop)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What the trips to the shops cost. */
    public Money trips() {
        return kitchen().shops().trips(shopsVisited().size());
    }

    public Session withFirstDay(int other) {
        return new Session(other, request, eaters, batches, shopping, proof, left);
    }

    public Session withRequest(PlanRequest other) {
        return new Session(firstDay, other, eaters, batches, shopping, proof, left);
    }

    public Session withEaters(List<EaterDays> other) {
        return new Session(firstDay, request, other, batches, shopping, proof, left);
    }

    public Session withShopping(List<Purchase> other) {
        return new Session(firstDay, request, eaters, batches, other, proof, left);
    }

    public Session withProof(Proof other) {
        return new Session(firstDay, request, eaters, batches, shopping, other, left);
    }

    /** The line of the shopping list; empty when the session does not use the food. */
    public Optional<Purchase> purchase(Food food) {
        return shopping.stream().filter(p -> p.food().equals(food)).findFirst();
    }

    /** The containers of a dish for an eater. */
    public Fill fill(Dish dish, Eater eater) {
        return Stream.concat(batches.stream(), left.stream())
                .filter(b -> b.dish().equals(dish))
                .flatMap(b -> b.fills().stream())
                .filter(f -> f.isFor(eater))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "dish (" + dish.id() + ") is not cooked for eater (" + eater.id() + ")."));
    }

    /** What the eater's day holds: containers, snacks and what is always eaten. */
    public Nutrients totals(Eater eater, Day day) {
        Nutrients sum = Nutrients.NONE;
        for (Serving serving : day.servings()) {
            sum = sum.plus(fill(serving.dish(), eater).perContainer().times(BigDecimal.valueOf(serving.count())));
        }
        for (Snack snack : day.snacks()) {
            sum = sum.plus(snack.nutrients());
        }
        for (Snack snack : day.always()) {
            sum = sum.plus(snack.nutrients());
        }
        return sum;
    }

    /** What a day of theirs holds on average; nutrients that some day does not know in full are incomplete. */
    public Nutrients averageDay(EaterDays eater) {
        return eater.days().stream()
                .map(day -> totals(eater.seat().eater(), day))
                .reduce(Nutrients.NONE, Nutrients::plus)
                .dividedBy(eater.days().size());
    }
}

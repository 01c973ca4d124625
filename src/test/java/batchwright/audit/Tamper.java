package batchwright.audit;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.Portion;
import batchwright.plan.Purchase;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** A plan with one thing changed. */
final class Tamper {
    private Tamper() {}

    static Plan eaters(Plan plan, UnaryOperator<List<EaterDays>> change) {
        return Plan.of(plan.first().withEaters(change.apply(plan.eaters())));
    }

    static Plan batches(Plan plan, UnaryOperator<List<Batch>> change) {
        Session s = plan.first();
        return Plan.of(
                new Session(s.firstDay(), s.request(), s.eaters(), change.apply(s.batches()), s.shopping(), s.proof()));
    }

    static Plan shopping(Plan plan, UnaryOperator<List<Purchase>> change) {
        return Plan.of(plan.first().withShopping(change.apply(plan.shopping())));
    }

    static Plan days(Plan plan, Eater eater, UnaryOperator<List<Day>> change) {
        return eaters(
                plan,
                all -> all.stream()
                        .map(e -> e.seat().eater().equals(eater) ? new EaterDays(e.seat(), change.apply(e.days())) : e)
                        .toList());
    }

    static Plan day(Plan plan, Eater eater, int day, UnaryOperator<Day> change) {
        return days(
                plan,
                eater,
                all -> all.stream()
                        .map(d -> d.day() == day ? change.apply(d) : d)
                        .toList());
    }

    static Plan servings(Plan plan, Eater eater, int day, Serving... servings) {
        return day(plan, eater, day, d -> new Day(day, List.of(servings), d.snacks(), d.always()));
    }

    static Plan snacks(Plan plan, Eater eater, int day, Snack... snacks) {
        return day(plan, eater, day, d -> new Day(day, d.servings(), List.of(snacks), d.always()));
    }

    static Plan always(Plan plan, Eater eater, int day, Snack... always) {
        return day(plan, eater, day, d -> new Day(day, d.servings(), d.snacks(), List.of(always)));
    }

    static Plan dish(Plan plan, Dish dish, UnaryOperator<Batch> change) {
        return batches(
                plan,
                all -> all.stream()
                        .map(b -> b.dish().equals(dish) ? change.apply(b) : b)
                        .toList());
    }

    static Plan fill(Plan plan, Dish dish, Eater eater, UnaryOperator<Fill> change) {
        return dish(
                plan,
                dish,
                batch -> new Batch(
                        batch.dish(),
                        batch.fills().stream()
                                .map(f -> f.isFor(eater) ? change.apply(f) : f)
                                .toList()));
    }

    static Plan grams(Plan plan, Dish dish, Eater eater, Part part, int grams) {
        return fill(
                plan,
                dish,
                eater,
                f -> new Fill(
                        f.eater(),
                        f.containers(),
                        f.portions().stream()
                                .map(p -> p.part().equals(part) ? new Portion(part, grams) : p)
                                .toList()));
    }

    /** One part in all containers written otherwise. */
    static Plan part(Plan plan, Part old, Part other) {
        return batches(
                plan,
                all -> all.stream()
                        .map(b -> new Batch(
                                b.dish(),
                                b.fills().stream()
                                        .map(f -> new Fill(
                                                f.eater(),
                                                f.containers(),
                                                f.portions().stream()
                                                        .map(p -> p.part().equals(old)
                                                                ? new Portion(other, p.rawGrams())
                                                                : p)
                                                        .toList()))
                                        .toList()))
                        .toList());
    }

    static Plan line(Plan plan, Food food, UnaryOperator<Purchase> change) {
        return shopping(
                plan,
                all -> all.stream()
                        .map(p -> p.food().equals(food) ? change.apply(p) : p)
                        .toList());
    }

    static Plan used(Plan plan, Food food, String grams) {
        return line(plan, food, p -> new Purchase(food, p.packs(), new BigDecimal(grams), p.fromPantryGrams()));
    }

    static Plan packs(Plan plan, Food food, Pack pack, int count) {
        return line(plan, food, p -> {
            Map<Pack, Integer> packs = new LinkedHashMap<>(p.packs());
            packs.put(pack, count);
            return new Purchase(food, packs, p.usedGrams(), p.fromPantryGrams());
        });
    }
}

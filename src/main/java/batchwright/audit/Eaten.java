package batchwright.audit;

import batchwright.food.Dish;
import batchwright.food.Ingredient;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The foods a session puts into containers, days and batches, recomputed from the files' recipes and measures. */
final class Eaten {
    private final Session session;
    private final Known known;
    private final Map<Key, Grams> containers = new HashMap<>();

    private record Key(Dish dish, Fill fill) {}

    Eaten(Session session, Known known) {
        this.session = session;
        this.known = known;
    }

    /** How the session fills this dish for this eater, if it cooks it for them. */
    Optional<Fill> fill(Dish dish, Eater eater) {
        return session.batches().stream()
                .filter(batch -> batch.dish().id().equals(dish.id()))
                .flatMap(batch -> batch.fills().stream())
                .filter(fill -> fill.isFor(eater))
                .findFirst();
    }

    /** Whether everything served on the day is cooked for the eater. */
    boolean allCooked(Eater eater, Day day) {
        return day.servings().stream().allMatch(s -> fill(s.dish(), eater).isPresent());
    }

    /** One container. */
    Grams inContainer(Dish dish, Fill fill) {
        return containers.computeIfAbsent(new Key(dish, fill), key -> {
            var grams = new Grams();
            for (Portion portion : fill.portions()) {
                known.part(dish, portion.part()).ifPresent(part -> addPortion(grams, part, portion.rawGrams()));
            }
            return grams;
        });
    }

    private void addPortion(Grams grams, Part part, int rawGrams) {
        BigDecimal raw = BigDecimal.valueOf(rawGrams);
        BigDecimal whole = whole(part);
        for (Ingredient ingredient : part.mix()) {
            BigDecimal edible = raw.multiply(ingredient.amount()).divide(whole, Tolerance.DIGITS);
            known.food(ingredient.food()).ifPresent(food -> grams.add(food, edible));
        }
        if (rawGrams > 0 && part.fatPouredOff().grams().signum() > 0) {
            BigDecimal fat = raw.multiply(part.fatPouredOff().grams()).divide(whole, Tolerance.DIGITS);
            BigDecimal saturated = fat.multiply(inMix(part, Nutrient.SATURATED_FAT))
                    .divide(inMix(part, Nutrient.FAT), Tolerance.DIGITS);
            grams.pourOff(part.name(), fat, saturated);
        }
    }

    /** A hundred times what a part's recipe as written holds. */
    private BigDecimal inMix(Part part, Nutrient nutrient) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            BigDecimal per100g = known.food(ingredient.food())
                    .map(food -> food.per100g().get(nutrient))
                    .orElse(BigDecimal.ZERO);
            sum = sum.add(per100g.multiply(ingredient.amount()));
        }
        return sum;
    }

    /** All amounts of a part's recipe together. */
    static BigDecimal whole(Part part) {
        BigDecimal whole = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            whole = whole.add(ingredient.amount());
        }
        return whole;
    }

    /** Everything an eater eats on a day. */
    Grams onDay(Eater eater, Day day) {
        var grams = new Grams();
        for (Serving serving : day.servings()) {
            fill(serving.dish(), eater)
                    .ifPresent(fill -> grams.add(inContainer(serving.dish(), fill), serving.count()));
        }
        addSnacks(grams, day);
        return grams;
    }

    private void addSnacks(Grams grams, Day day) {
        for (List<Snack> snacks : List.of(day.snacks(), day.always())) {
            for (Snack snack : snacks) {
                known.measure(snack.measure())
                        .ifPresent(measure -> known.food(measure.food())
                                .ifPresent(food ->
                                        grams.add(food, measure.grams().multiply(BigDecimal.valueOf(snack.count())))));
            }
        }
    }

    /** What is weighed out for a whole batch. */
    Grams inBatch(Batch batch) {
        var grams = new Grams();
        batch.fills().forEach(fill -> grams.add(inContainer(batch.dish(), fill), fill.containers()));
        return grams;
    }

    /** All batches, snacks and what is always eaten. */
    Grams all() {
        var grams = new Grams();
        grams.add(cooked(), 1);
        grams.add(besides(), 1);
        return grams;
    }

    /** All batches. */
    Grams cooked() {
        var grams = new Grams();
        session.batches().forEach(batch -> grams.add(inBatch(batch), 1));
        return grams;
    }

    /** What is weighed into all batches: pieces are counted. */
    Grams weighed() {
        var grams = new Grams();
        for (Batch batch : session.batches()) {
            for (Fill fill : batch.fills()) {
                for (Portion portion : fill.portions()) {
                    known.part(batch.dish(), portion.part())
                            .filter(part -> !part.pieces())
                            .ifPresent(part -> addPortion(grams, part, portion.rawGrams() * fill.containers()));
                }
            }
        }
        return grams;
    }

    /** What is eaten besides containers: snacks and what is always eaten. */
    Grams besides() {
        var grams = new Grams();
        for (EaterDays eater : session.eaters()) {
            eater.days().forEach(day -> addSnacks(grams, day));
        }
        return grams;
    }
}

package batchwright.audit;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.person.Eater;
import batchwright.person.Wishes;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Snack;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Nothing an eater avoids reaches them. An allergen anywhere in a dish counts, also in a staple and in a part left out of their
 * containers: parts share a pot, a board and a spoon.
 */
record Avoid() implements Inspection {
    @Override
    public String name() {
        return "avoid";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.fills((batch, fill) -> evidence.known()
                .seat(fill)
                .ifPresent(seat -> evidence.known()
                        .dish(batch.dish())
                        .ifPresent(dish -> inspectFill(evidence, dish, fill, seat.eater(), findings))));
        evidence.days((seat, day) -> {
            List<Snack> eaten = new ArrayList<>(day.snacks());
            eaten.addAll(day.always());
            for (Snack snack : eaten) {
                evidence.known()
                        .food(snack.measure().food())
                        .ifPresent(food -> inspectFood(Say.day(seat, day), food, seat.eater(), findings));
            }
        });
    }

    private static void inspectFill(Evidence evidence, Dish dish, Fill fill, Eater eater, Findings findings) {
        String where = dish.id() + " for " + eater.name();
        if (eater.wishes().avoidDishes().contains(dish)) {
            findings.add(where + ": the dish is avoided");
        }
        for (Part part : dish.parts()) {
            for (Ingredient ingredient : part.mix()) {
                evidence.known()
                        .food(ingredient.food())
                        .ifPresent(
                                food -> inspectAllergens(where, food.id(), food.allergens(), eater.wishes(), findings));
            }
        }
        for (Staple staple : dish.staples()) {
            inspectAllergens(where, staple.name(), staple.allergens(), eater.wishes(), findings);
        }
        for (Portion portion : fill.portions()) {
            if (portion.rawGrams() > 0) {
                evidence.known()
                        .part(dish, portion.part())
                        .ifPresent(part ->
                                part.mix().forEach(i -> inspectLiking(where, i.food(), eater.wishes(), findings)));
            }
        }
    }

    private static void inspectFood(String where, Food food, Eater eater, Findings findings) {
        inspectAllergens(where, food.id(), food.allergens(), eater.wishes(), findings);
        inspectLiking(where, food, eater.wishes(), findings);
    }

    private static void inspectAllergens(
            String where, String what, Set<Allergen> allergens, Wishes wishes, Findings findings) {
        for (Allergen allergen : allergens) {
            if (wishes.avoidAllergens().contains(allergen)) {
                findings.add(where + ": " + what + " carries " + allergen.label());
            }
        }
    }

    private static void inspectLiking(String where, Food food, Wishes wishes, Findings findings) {
        if (wishes.avoidFoods().contains(food)) {
            findings.add(where + ": " + food.id() + " is avoided");
        }
    }
}

package batchwright.audit;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Instead;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.food.origin.Diet;
import batchwright.food.origin.Origins;
import batchwright.person.Eater;
import batchwright.person.Wishes;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Snack;
import batchwright.plan.left.LeftDish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Nothing an eater avoids reaches them. An allergen anywhere in a dish counts, also in a staple and in a part left out of their
 * containers: parts share a pot, a board and a spoon. So does what a strict diet bars.
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
        evidence.request().left().dishes().forEach(left -> inspectLeft(left, evidence, findings));
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

    /** Who has containers from before avoids neither the dish they are of nor a food that is in all of them. */
    private static void inspectLeft(LeftDish left, Evidence evidence, Findings findings) {
        Optional<Dish> origin = evidence.request().kitchen().dish(left.origin());
        origin.ifPresent(dish -> evidence.days((seat, day) -> {
            Wishes wishes = seat.eater().wishes();
            boolean eaten = day.servings().stream()
                    .anyMatch(serving -> serving.dish().id().equals(left.dish().id()));
            if (eaten && wishes.avoidDishes().contains(dish)) {
                findings.add(Say.day(seat, day) + ": " + left.origin() + " is avoided");
            }
            if (eaten && !seat.eater().id().equals(left.eater())) {
                dish.parts().stream()
                        .filter(part -> !part.optional())
                        .flatMap(part -> part.mix().stream())
                        .filter(ingredient -> ingredient.instead().equals(Instead.NONE))
                        .forEach(ingredient -> inspectLiking(Say.day(seat, day), ingredient.food(), wishes, findings));
            }
        }));
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
            inspectDiets(where, staple.name(), staple.id(), staple.origins(), diets(eater, false), eater, findings);
        }
        dish.foods()
                .forEach(food ->
                        inspectDiets(where, food.id(), food.id(), food.origins(), diets(eater, true), eater, findings));
        for (Portion portion : fill.portions()) {
            if (portion.rawGrams() > 0) {
                evidence.known()
                        .part(dish, portion.part())
                        .ifPresent(part -> part.mix().forEach(i -> inspectEaten(where, i.food(), eater, findings)));
            }
        }
    }

    private static void inspectFood(String where, Food food, Eater eater, Findings findings) {
        inspectAllergens(where, food.id(), food.allergens(), eater.wishes(), findings);
        inspectEaten(where, food, eater, findings);
    }

    private static void inspectEaten(String where, Food food, Eater eater, Findings findings) {
        inspectLiking(where, food, eater.wishes(), findings);
        inspectDiets(where, food.id(), food.id(), food.origins(), diets(eater, false), eater, findings);
    }

    private static List<Diet> diets(Eater eater, boolean onlyWholeDish) {
        return eater.wishes().avoided().diets().stream()
                .filter(diet -> !onlyWholeDish || diet.wholeDish())
                .toList();
    }

    /** What is barred for certain, and what is in question unless the eater has read its label. */
    private static void inspectDiets(
            String where, String what, String id, Origins origins, List<Diet> diets, Eater eater, Findings findings) {
        boolean read = eater.wishes().avoided().checked().contains(id);
        for (Diet diet : diets) {
            var barred = new TreeSet<>(diet.bars());
            barred.retainAll(origins.certain());
            barred.forEach(origin -> findings.add(where + ": " + what + " is or holds " + origin.label()));
            var asked = new TreeSet<>(diet.bars());
            asked.addAll(diet.asks());
            asked.removeIf(origin -> !origins.doubtful().contains(origin)
                    && !(diet.asks().contains(origin) && origins.certain().contains(origin)));
            if (!read && (!origins.known() || !asked.isEmpty())) {
                findings.add(where + ": nobody has read the label of " + what);
            }
        }
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

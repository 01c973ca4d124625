package batchwright.person;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.food.origin.Diet;
import batchwright.food.origin.Origins;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What never reaches an eater.
 *
 * @param foods by name
 * @param allergens foods that carry one
 * @param dishes by name
 * @param diets foods with an origin that one of them bars
 * @param checked foods and staples, by id, of which the eater has read the label: they keep to the diets wherever that was only a
 *     question. It lifts no bar that is certain, and no allergen
 */
public record Avoided(
        Set<Food> foods, Set<Allergen> allergens, Set<Dish> dishes, Set<Diet> diets, Set<String> checked) {
    public static final Avoided NOTHING = new Avoided(Set.of(), Set.of(), Set.of(), Set.of(), Set.of());

    public boolean isNothing() {
        return foods.isEmpty() && allergens.isEmpty() && dishes.isEmpty() && diets.isEmpty();
    }

    /** The same diets, with everything else that is avoided replaced. */
    public Avoided with(Set<Food> otherFoods, Set<Allergen> otherAllergens, Set<Dish> otherDishes) {
        return new Avoided(otherFoods, otherAllergens, otherDishes, diets, checked);
    }

    public Avoided withDiets(Set<Diet> others) {
        return new Avoided(foods, allergens, dishes, others, checked);
    }

    public Avoided withChecked(Set<String> others) {
        return new Avoided(foods, allergens, dishes, diets, others);
    }

    /** With these too. */
    public Avoided and(Set<Food> more) {
        Set<Food> all = new LinkedHashSet<>(foods);
        all.addAll(more);
        return with(all, allergens, dishes);
    }

    public boolean allows(Food food) {
        return !foods.contains(food)
                && food.allergens().stream().noneMatch(allergens::contains)
                && diets.stream().allMatch(diet -> allows(diet, food.id(), food.origins()));
    }

    public boolean allows(Part part) {
        return part.mix().stream().allMatch(i -> allows(i.food()));
    }

    /**
     * Whether this dish may reach the eater. A part that can be left out may hold a disliked food or one that a diet bars, but an
     * avoided allergen anywhere in the dish excludes it, and so does what a strict diet bars: parts share a pot, a board and a
     * spoon.
     */
    public boolean allows(Dish dish) {
        return !dishes.contains(dish)
                && dish.allergens().stream().noneMatch(allergens::contains)
                && dish.staples().stream().allMatch(this::allows)
                && dish.parts().stream().allMatch(part -> part.optional() || allows(part))
                && diets.stream()
                        .filter(Diet::wholeDish)
                        .allMatch(diet ->
                                dish.foods().stream().allMatch(food -> allows(diet, food.id(), food.origins())));
    }

    private boolean allows(Staple staple) {
        return diets.stream().allMatch(diet -> allows(diet, staple.id(), staple.origins()));
    }

    private boolean allows(Diet diet, String id, Origins origins) {
        return switch (diet.has(origins)) {
            case YES -> true;
            case ASK -> checked.contains(id);
            case NO -> false;
        };
    }
}

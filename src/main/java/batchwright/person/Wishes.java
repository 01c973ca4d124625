package batchwright.person;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Part;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How an eater likes to be fed.
 *
 * @param containersADay how many containers each day, exactly
 * @param avoided never reaches this eater
 * @param always eaten every day besides containers and snacks
 * @param snackFoods the only foods offered as snacks; empty: every measure that the files offer as a snack
 * @param snackMeasuresADay most snack measures in one day
 * @param snackKindsADay most different snack measures in one day
 * @param meals what the containers are for, and how often the same dish may come
 */
public record Wishes(
        int containersADay,
        Avoided avoided,
        List<Always> always,
        Optional<Set<Food>> snackFoods,
        int snackMeasuresADay,
        int snackKindsADay,
        Meals meals) {
    /** With the usual meals. */
    public Wishes(
            int containersADay,
            Avoided avoided,
            List<Always> always,
            Optional<Set<Food>> snackFoods,
            int snackMeasuresADay,
            int snackKindsADay) {
        this(containersADay, avoided, always, snackFoods, snackMeasuresADay, snackKindsADay, Meals.USUAL);
    }

    /** Something eaten every day: so many of a household measure. */
    public record Always(Measure measure, int count) {}

    public Wishes withContainersADay(int other) {
        return new Wishes(other, avoided, always, snackFoods, snackMeasuresADay, snackKindsADay, meals);
    }

    public Wishes with(Meals other) {
        return new Wishes(containersADay, avoided, always, snackFoods, snackMeasuresADay, snackKindsADay, other);
    }

    public Wishes with(Avoided other) {
        return new Wishes(containersADay, other, always, snackFoods, snackMeasuresADay, snackKindsADay, meals);
    }

    public Wishes withAvoided(Set<Food> foods, Set<Allergen> allergens, Set<Dish> dishes) {
        return with(avoided.with(foods, allergens, dishes));
    }

    public Wishes withSnacks(Optional<Set<Food>> only, int measuresADay, int kindsADay) {
        return new Wishes(containersADay, avoided, always, only, measuresADay, kindsADay, meals);
    }

    public Set<Food> avoidFoods() {
        return avoided.foods();
    }

    public Set<Allergen> avoidAllergens() {
        return avoided.allergens();
    }

    public Set<Dish> avoidDishes() {
        return avoided.dishes();
    }

    /** Whether this food may reach the eater. */
    public boolean allows(Food food) {
        return avoided.allows(food);
    }

    /** Whether this food may be offered to the eater as a snack. */
    public boolean offersAsSnack(Food food) {
        return allows(food) && snackFoods.map(only -> only.contains(food)).orElse(true);
    }

    /** Whether plans may offer it to the eater as a snack. */
    public boolean offersInPlans(Measure measure) {
        return offersAsSnack(measure.food()) && (snackFoods.isPresent() || !measure.onlyNamed());
    }

    /** Whether this part may reach the eater. */
    public boolean allows(Part part) {
        return avoided.allows(part);
    }

    /** Whether this dish may reach the eater, by what {@link Avoided} says. */
    public boolean allows(Dish dish) {
        return avoided.allows(dish);
    }

    /** What a day's containers must keep for the meals. */
    public List<KindsADay> kindsADay() {
        return meals.kinds(containersADay);
    }

    /** Most containers of the dish in a day, for the meals that it is for. */
    public int mostADay(Dish dish) {
        int most = Math.min(meals.sameDishADay(), containersADay);
        for (KindsADay kinds : kindsADay()) {
            most = Math.min(most, kinds.counts(dish) ? kinds.most() : containersADay - kinds.least());
        }
        return Math.max(0, most);
    }

    /** Most containers of the dish over so many days on which it may be eaten. */
    public int mostInAll(Dish dish, int days) {
        return Math.min(meals.sameDishInAll().orElse(Integer.MAX_VALUE), days * mostADay(dish));
    }
}

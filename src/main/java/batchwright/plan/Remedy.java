package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.limit.Range;
import batchwright.limit.Setting;
import batchwright.person.Eater;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What somebody can change to get a plan, as data. How it is done - an option, a line of a file, a slider - only the code that
 * shows it knows.
 */
public sealed interface Remedy {
    /** @param to empty when how much is needed is not known */
    record RaiseBudget(Optional<Money> to, Currency currency) implements Remedy {}

    record PlanDays(int days) implements Remedy {}

    record AllowDishes(int dishes) implements Remedy {}

    record AskForFewerDishes(int least) implements Remedy {}

    /** All of last time's dishes. */
    record AllowLastTime() implements Remedy {}

    /** @param dish no longer asked for; empty for all of them */
    record AskForLess(Optional<Dish> dish) implements Remedy {}

    /** @param shop that is gone to besides; empty for all of them */
    record GoToShop(Optional<String> shop) implements Remedy {}

    /** Of work with the hands, in a cooking session. */
    record AllowMinutes(int handsOn) implements Remedy {}

    /** From the start of a cooking session until its last step ends. */
    record AllowTime(int minutes) implements Remedy {}

    /** @param range of the limit that the setting changes */
    record ChangeTarget(Eater eater, Setting setting, Range range) implements Remedy {}

    record ChangeContainers(Eater eater, int aDay) implements Remedy {}

    /** How many of the containers of a day are for a meal. */
    record ChangeMeal(Eater eater, Meal meal, int least, int most) implements Remedy {}

    enum Meal {
        BREAKFASTS,
        LUNCHES,
        DINNERS
    }

    /** The same dish more often; what is empty stays. */
    record AllowSameDish(Eater eater, OptionalInt aDay, OptionalInt inAll) implements Remedy {}

    /** What is empty stays. */
    record AllowSnacks(Eater eater, OptionalInt measuresADay, OptionalInt kindsADay) implements Remedy {}

    /** Also such as do not go together. */
    record AllowAnySnacks(Eater eater) implements Remedy {}

    /** Not only those that the eater named. */
    record OfferEverySnack(Eater eater) implements Remedy {}

    /** @param id of the food, dish, allergen or diet that is no longer avoided; empty for all of them */
    record AvoidLess(Eater eater, Optional<String> id) implements Remedy {}

    /** Parts of a dish that are cooked for nobody, with their steps. */
    record LeaveOut(Dish dish, List<Part> parts) implements Remedy {}

    /** @param dish empty for every dish that may be frozen */
    record Freeze(Optional<Dish> dish) implements Remedy {}

    /** Packs of foods that are not sold so far. */
    record SellPacks(Optional<Food> food) implements Remedy {}

    /** One more among those that may be cooked. */
    record OfferAnotherDish() implements Remedy {}

    /** There is no dish at all. */
    record WriteDishes() implements Remedy {}

    /** A limit that nobody can change is in the way: other dishes, parts or snacks. */
    record ChangeWhatIsCooked() implements Remedy {}

    /** Whatever the limits, what is cooked and sold is not enough. */
    record ChangeDishesOrPacks() implements Remedy {}

    /** Neither alone does. */
    record Together(Remedy first, Remedy besides) implements Remedy {}
}

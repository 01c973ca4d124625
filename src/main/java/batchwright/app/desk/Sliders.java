package batchwright.app.desk;

import batchwright.app.DishesWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.TypedSum;
import batchwright.plan.PlanRequest;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * All that can be moved on a desk.
 *
 * @param days 1 to 28
 * @param budget most to spend; empty for no limit
 * @param dishes those that may, must and must not be cooked, and foods that must not be used
 * @param eaters what is changed of whom, by the name that the question has for them; whoever is missing is as written
 */
public record Sliders(int days, Optional<TypedSum> budget, DishesWanted dishes, Map<String, EaterSliders> eaters) {
    public Sliders {
        eaters = Map.copyOf(eaters);
    }

    /** As a question says it, nothing being changed of anybody. */
    public static Sliders of(PlanQuestion question) {
        return new Sliders(
                question.days(), question.budget(), question.cooking().dishes(), Map.of());
    }

    public Sliders withDays(int other) {
        return new Sliders(other, budget, dishes, eaters);
    }

    public Sliders withBudget(Optional<TypedSum> other) {
        return new Sliders(days, other, dishes, eaters);
    }

    public Sliders withDishes(DishesWanted other) {
        return new Sliders(days, budget, other, eaters);
    }

    public Sliders withEater(String name, EaterSliders other) {
        Map<String, EaterSliders> all = new LinkedHashMap<>(eaters);
        all.put(name, other);
        return new Sliders(days, budget, dishes, all);
    }

    /** What is changed of somebody. */
    public EaterSliders eater(String name) {
        return eaters.getOrDefault(name, EaterSliders.AS_WRITTEN);
    }

    /** @throws Refused when so many days cannot be planned */
    PlanQuestion in(PlanQuestion question) {
        if (days < 1 || days > PlanRequest.MOST_DAYS) {
            throw Refused.because(
                    days + " days cannot be planned", "A plan has 1 to " + PlanRequest.MOST_DAYS + " days.");
        }
        return question.withDays(days).withBudget(budget).withDishes(dishes);
    }
}

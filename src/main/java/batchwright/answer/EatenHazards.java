package batchwright.answer;

import batchwright.food.Food;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.needs.caution.StricterFoodSafety;
import batchwright.person.Eater;
import batchwright.plan.EatenFoods;
import batchwright.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What could do harm in the food that one eater eats by a plan. */
final class EatenHazards {
    private EatenHazards() {}

    /** None for anyone not at the table. */
    static List<Caution> of(Plan plan, Eater eater) {
        var eaten = new EatenFoods(plan, eater);
        if (eaten.days() == 0) {
            return List.of();
        }
        List<Caution> cautions = new ArrayList<>(FishEaten.of(eaten));
        cautions.addAll(HazardCautions.ofSnacks(eaten.besidesContainers()));
        if (StricterFoodSafety.isFor(eater)) {
            cautions.addAll(atRisk(eaten));
        }
        SaltToAdd.of(plan, eater).ifPresent(cautions::add);
        return cautions;
    }

    private static List<Caution> atRisk(EatenFoods eaten) {
        List<Caution> cautions = new ArrayList<>();
        for (Hazard hazard : Hazard.all()) {
            if (hazard.who() == Hazard.Who.AT_RISK) {
                Set<Food> foods = new LinkedHashSet<>(hazard.in(eaten.besidesContainers()));
                eaten.dishes().forEach(dish -> foods.addAll(hazard.in(dish)));
                foods.retainAll(eaten.grams().keySet());
                if (!foods.isEmpty()) {
                    cautions.add(
                            HazardCautions.of(hazard, hazard.code(), Map.of("foods", HazardCautions.names(foods))));
                }
            }
        }
        return cautions;
    }
}

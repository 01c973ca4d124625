package batchwright.answer;

import batchwright.food.Food;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.needs.caution.StricterFoodSafety;
import batchwright.plan.EaterDays;
import batchwright.plan.EatenFoods;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What could hurt in the food that one eater eats by a plan. */
final class EatenHazards {
    private EatenHazards() {}

    static List<Caution> of(Session session, EaterDays eater) {
        var eaten = new EatenFoods(session, eater);
        List<Caution> cautions = new ArrayList<>(FishEaten.of(session, eater));
        cautions.addAll(HazardCautions.ofSnacks(eaten.besidesContainers()));
        if (StricterFoodSafety.isFor(eater.seat().eater())) {
            cautions.addAll(atRisk(eaten));
        }
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
                    cautions.add(HazardCautions.of(
                            hazard, hazard.code(), Map.of("foods", HazardCautions.names(foods))));
                }
            }
        }
        return cautions;
    }
}

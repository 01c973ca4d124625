package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.person.Eater;
import batchwright.person.HealthEffect;
import java.util.Optional;

/** What to mind with food that is kept, beside a plan, where an illness from food is likelier or worse: pregnancy, old age, weak defences. */
public final class StricterFoodSafety {
    private static final double OLDER_YEARS = 65;

    private StricterFoodSafety() {}

    /** Whether an illness from food harms them more. */
    public static boolean isFor(Eater eater) {
        return eater.body().ageYears() >= OLDER_YEARS || eater.health().has(HealthEffect.STRICT_FOOD_SAFETY);
    }

    public static Optional<Caution> of(Eater eater) {
        return isFor(eater)
                ? Optional.of(Caution.warn(
                        "stricter_food_safety",
                        "In pregnancy, from 65 years on and with weak defences an illness from food is likelier and worse, so the times"
                                + " here are too long. Eat what is cooked within 1-2 days, or freeze it at once; heat it until it steams"
                                + " all through; and leave out risky food: raw or soft-cooked meat, fish, egg and sprouts, milk that is not"
                                + " pasteurised, soft cheese, cold cuts, smoked fish and pate. Ask your clinic, and follow the advice of"
                                + " your local food-safety authority.",
                        Citation.designChoice("general guidance for people at higher risk; from memory")))
                : Optional.empty();
    }
}

package batchwright.files.dishes;

import batchwright.files.value.Problems;
import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.text.Span;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/**
 * Warns when no container of a dish can be one that a plan would use, or a box would hold. All limits are common practice:
 *
 * <ul>
 *   <li>150 kcal: 15 % of a day of 1000 kcal, the least that a container must hold for the smallest day;
 *   <li>1500 kcal: 45 % of a day of 3300 kcal, the most that it may hold for an eater who needs much;
 *   <li>10 g protein: 0.25 g per kg, the protein floor of a container, for an adult of 40 kg;
 *   <li>100 g: less is a snack; 1200 g: the largest usual lunch boxes hold about 1.2 litres.
 * </ul>
 */
final class ContainerReach {
    private static final int LEAST_KCAL = 150;
    private static final int MOST_KCAL = 1500;
    private static final int LEAST_PROTEIN_G = 10;
    private static final int LEAST_G = 100;
    private static final int MOST_G = 1200;
    private static final double PER = 100;

    private static final String WITH_MOST = "with all parts at most, a container holds ";
    private static final String WITH_LEAST = "with all parts at least, a container holds ";

    private final Dish dish;
    private final DishPlaces places;
    private final Problems problems;

    ContainerReach(Dish dish, DishPlaces places, Problems problems) {
        this.dish = dish;
        this.places = places;
        this.problems = problems;
    }

    void check() {
        double mostKcal = sum(part -> kcal(part, part.mostGrams()));
        double leastKcal = sum(part -> part.optional() ? 0 : kcal(part, part.leastGrams()));
        double mostProtein = sum(part -> protein(part, part.mostGrams()));
        double mostGrams = sum(part -> cooked(part, part.mostGrams()));
        if (mostGrams < LEAST_G) {
            Part part = greatest(p -> cooked(p, p.mostGrams()));
            warn(
                    part,
                    "most",
                    WITH_MOST + whole(mostGrams) + " g cooked",
                    "expected at least 100 g: raise most of " + name(part));
        } else if (mostKcal < LEAST_KCAL) {
            Part part = greatest(p -> kcal(p, p.mostGrams()));
            warn(
                    part,
                    "most",
                    WITH_MOST + whole(mostKcal) + " kcal",
                    "no plan uses less than about 150 kcal: raise most of " + name(part));
        } else if (mostProtein < LEAST_PROTEIN_G) {
            Part part = greatest(p -> protein(p, p.mostGrams()));
            warn(
                    part,
                    "most",
                    WITH_MOST + whole(mostProtein) + " g of protein",
                    "an adult of 40 kg needs 10 g in a container: raise most of %s, or add a food with protein"
                            .formatted(name(part)));
        }
        if (leastKcal > MOST_KCAL) {
            Part part = greatest(p -> p.optional() ? 0 : kcal(p, p.leastGrams()));
            warn(
                    part,
                    "least",
                    WITH_LEAST + whole(leastKcal) + " kcal",
                    "few eaters take more than 1500 kcal at once: lower least of " + name(part));
        } else if (mostGrams > MOST_G) {
            Part part = greatest(p -> cooked(p, p.mostGrams()));
            warn(
                    part,
                    "most",
                    WITH_MOST + whole(mostGrams) + " g cooked",
                    "usual boxes hold at most about 1200 g: lower most of " + name(part));
        }
    }

    private void warn(Part part, String key, String wrong, String expected) {
        Span at = places.of(dish.parts().indexOf(part), key);
        problems.warning(at, wrong, expected);
    }

    private double sum(ToDoubleFunction<Part> amount) {
        return dish.parts().stream().mapToDouble(amount).sum();
    }

    private Part greatest(ToDoubleFunction<Part> amount) {
        return dish.parts().stream().max(Comparator.comparingDouble(amount)).orElseThrow();
    }

    private static double kcal(Part part, int rawGrams) {
        return part.per100g().get(Nutrient.ENERGY).doubleValue() * rawGrams / PER;
    }

    private static double protein(Part part, int rawGrams) {
        return part.per100g().get(Nutrient.PROTEIN).doubleValue() * rawGrams / PER;
    }

    private static double cooked(Part part, int rawGrams) {
        return part.yieldFactor().doubleValue() * rawGrams;
    }

    private static String name(Part part) {
        return '"' + part.name() + '"';
    }

    private static String whole(double amount) {
        return BigDecimal.valueOf(amount).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}

package batchwright.reference.take;

import batchwright.food.Allergen;
import batchwright.food.origin.Origin;
import batchwright.food.origin.Origins;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Origins as far as the source's food group and the guessed allergens tell them. Groups of mixed foods stay unknown, so that a diet
 * asks.
 */
final class ProposedOrigins {
    private static final Map<String, Origin> MEATS = Map.of(
            "Beef Products", Origin.BEEF,
            "Pork Products", Origin.PIG,
            "Poultry Products", Origin.LAND_MEAT);
    private static final Set<String> PLANTS = Set.of(
            "Vegetables and Vegetable Products",
            "Fruits and Fruit Juices",
            "Nut and Seed Products",
            "Legumes and Legume Products",
            "Cereal Grains and Pasta",
            "Spices and Herbs");
    private static final Set<String> WHOLE = Set.of("Dairy and Egg Products", "Finfish and Shellfish Products");
    /** Words of a plant food that is not only that. */
    private static final String ANIMAL =
            "pork bacon ham beef meat meatballs frankfurters franks sausage lard chicken turkey gelatin honey traditional sauce recipe";

    private ProposedOrigins() {}

    static Origins of(String sourceGroup, Description description, Set<Allergen> allergens) {
        Origin meat = MEATS.get(sourceGroup);
        boolean plant = PLANTS.contains(sourceGroup) && !description.has(ANIMAL);
        if (meat == null && !plant && !WHOLE.contains(sourceGroup)) {
            return Origins.UNKNOWN;
        }
        var certain = EnumSet.noneOf(Origin.class);
        var doubtful = EnumSet.noneOf(Origin.class);
        if (meat != null) {
            certain.add(meat);
        }
        boolean oats = description.has("oat oats oatmeal");
        allergens.forEach(allergen -> add(allergen, oats, plant || meat != null ? doubtful : certain, doubtful));
        if (!oats && (allergens.contains(Allergen.GLUTEN) || allergens.contains(Allergen.WHEAT))) {
            doubtful.remove(Origin.GLUTEN_CEREAL);
            certain.add(Origin.GLUTEN_CEREAL);
        }
        if (description.has("cheese yogurt sour ice")) {
            doubtful.add(Origin.BY_PRODUCT);
        }
        doubtful.removeAll(certain);
        return Origins.of(certain, doubtful);
    }

    /** @param told where what the food is made of goes; in plants and meats an animal's allergen is only a guess */
    private static void add(Allergen allergen, boolean oats, Set<Origin> told, Set<Origin> doubtful) {
        switch (allergen) {
            case MILK -> {
                told.add(Origin.MILK);
                doubtful.add(Origin.LACTOSE);
            }
            case EGG -> told.add(Origin.EGG);
            case FISH -> told.add(Origin.FISH);
            case CRUSTACEAN -> told.add(Origin.CRUSTACEAN);
            case MOLLUSC -> told.add(Origin.MOLLUSC);
            case WHEAT, GLUTEN -> doubtful.add(oats ? Origin.OATS : Origin.GLUTEN_CEREAL);
            default -> {
                // No diet asks for it.
            }
        }
    }
}

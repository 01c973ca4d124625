package batchwright.reference.take;

import batchwright.reference.Sr28Food;
import java.util.Map;

/**
 * The group of the catalogue that a food of USDA SR28 most likely belongs to.
 *
 * @param sure whether the source's own group says so
 */
record ProposedGroup(String name, boolean sure) {
    /** Where a whole group of the source is one group of the catalogue. */
    private static final Map<String, String> WHOLE = Map.of(
            "Beef Products", "meat",
            "Pork Products", "meat",
            "Lamb, Veal, and Game Products", "meat",
            "Poultry Products", "meat",
            "Sausages and Luncheon Meats", "meat",
            "Finfish and Shellfish Products", "fish",
            "Cereal Grains and Pasta", "grain",
            "Breakfast Cereals", "grain",
            "Spices and Herbs", "other",
            "Sweets", "sweet");

    private static final String STARCHY =
            "potato potatoes cassava yam yams taro yautia poi arrowroot plantains plantain";
    private static final String DRY = "dried dehydrated raisins prunes dates";
    private static final String SAUCES = "catsup pickles pickle relish";

    static ProposedGroup of(Sr28Food food, Description description) {
        String whole = WHOLE.get(food.group());
        if (whole != null) {
            return new ProposedGroup(whole, true);
        }
        return switch (food.group()) {
            case "Dairy and Egg Products" -> dairy(description);
            case "Fats and Oils" -> oil(description);
            case "Legumes and Legume Products" -> legume(description);
            case "Nut and Seed Products" -> sure("nut_seed");
            case "Vegetables and Vegetable Products" -> vegetable(description);
            case "Fruits and Fruit Juices" -> fruit(description);
            case "Baked Products" -> baked(description);
            case "Soups, Sauces, and Gravies" ->
                description.has("sauce gravy dip salsa") ? sure("sauce") : guess("other");
            case "Beverages" -> description.has("protein") ? guess("protein_powder") : guess("other");
            default -> guess("other");
        };
    }

    private static ProposedGroup dairy(Description d) {
        return d.startsWith("egg") && !d.startsWith("eggnog") ? sure("egg") : sure("dairy");
    }

    private static ProposedGroup oil(Description d) {
        return d.has("dressing sauce spread") ? guess("sauce") : sure("fat_oil");
    }

    private static ProposedGroup legume(Description d) {
        if (d.startsWith("peanut")) {
            return sure("nut_seed");
        }
        if (d.has("sauce hummus")) {
            return sure("sauce");
        }
        return d.small().contains("protein isolate") || d.small().contains("protein concentrate")
                ? guess("protein_powder")
                : sure("legume");
    }

    private static ProposedGroup vegetable(Description d) {
        if (d.has(STARCHY)) {
            return d.has("greens leaves shoots chips puffs") ? guess("vegetable") : sure("starchy_vegetable");
        }
        if (d.has(SAUCES)) {
            return guess("sauce");
        }
        boolean seasoning = d.has("garlic ginger parsley coriander chives wasabi epazote juice");
        return seasoning ? guess("other") : sure("vegetable");
    }

    private static ProposedGroup fruit(Description d) {
        if (d.has("juice nectar")) {
            return guess("other");
        }
        return d.has(DRY) ? sure("dried_fruit") : sure("fruit");
    }

    private static ProposedGroup baked(Description d) {
        if (d.startsWith("leavening")) {
            return sure("other");
        }
        return d.has(
                        "cake cakes cookies cookie pie doughnuts danish coffeecake pastry pastries muffins sweet eclair brownies")
                ? guess("sweet")
                : sure("grain");
    }

    private static ProposedGroup sure(String name) {
        return new ProposedGroup(name, true);
    }

    private static ProposedGroup guess(String name) {
        return new ProposedGroup(name, false);
    }
}

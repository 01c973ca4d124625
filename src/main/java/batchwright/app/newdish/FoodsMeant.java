package batchwright.app.newdish;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Measures;
import batchwright.reference.find.FoodSearch;
import batchwright.reference.find.FoundFoods;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which food of the tables a cook means, and what is a seasoning rather than a food that is counted. */
final class FoodsMeant {
    /** Numbers of USDA SR28 that begin so are its group "Spices and Herbs", salt and vinegar among them. */
    private static final String SPICES = "02";
    /** A mustard or a caper of the catalogue has a price and is counted; a pinch of a spice is not. */
    private static final String UNCOUNTED_GROUP = "other";

    private static final int SHOWN = 4;

    private final Kitchen kitchen;
    private final FoodSearch search;
    private final Sr28Measures measures = Sr28Measures.load();

    FoodsMeant(Kitchen kitchen, Sr28 reference) {
        this.kitchen = kitchen;
        this.search = FoodSearch.in(kitchen.foods().values(), reference);
    }

    /**
     * A food of the kitchen.
     *
     * @param food empty when none is meant for sure
     * @param says what to type instead
     */
    record Meant(Optional<Food> food, String says) {}

    Meant meant(String words) {
        Optional<Food> exact = Optional.ofNullable(
                kitchen.foods().get(words.toLowerCase(Locale.ROOT).strip().replace(' ', '_')));
        if (exact.isPresent()) {
            return new Meant(exact, "");
        }
        FoundFoods found = search.find(words);
        if (found.match() == FoundFoods.Match.ALL && !found.yours().isEmpty()) {
            return new Meant(Optional.of(found.yours().get(0)), "");
        }
        return new Meant(Optional.empty(), unclear(words, found));
    }

    private static String unclear(String words, FoundFoods found) {
        String nearest = found.yours().stream().limit(SHOWN).map(Food::id).collect(Collectors.joining(", "));
        String says = "Your tables have no \"" + words + "\".";
        if (!nearest.isEmpty()) {
            return says + " Nearest: " + nearest + ". Enter it with one of these, or leave it out.";
        }
        return says
                + (found.reference().isEmpty()
                        ? " Enter it in other words, or leave it out."
                        : " USDA SR28 has it as " + found.reference().get(0)
                                + ": add that to your foods first, or enter another food.");
    }

    /** The name that a dish writes for it; empty when it is no seasoning. */
    Optional<String> seasoning(String words) {
        if (words.isBlank()) {
            return Optional.empty();
        }
        Optional<Food> exact = meant(words).food();
        if (exact.isPresent()) {
            return exact.filter(FoodsMeant::isSpice).map(food -> food.id().replace('_', ' '));
        }
        return spice(words)
                .map(food -> words.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z ]", " ")
                        .replaceAll("\\s+", " ")
                        .strip());
    }

    private static boolean isSpice(Food food) {
        return food.group().equals(UNCOUNTED_GROUP)
                && food.ndb().filter(number -> number.startsWith(SPICES)).isPresent();
    }

    private Optional<Sr28Food> spice(String words) {
        FoundFoods found = search.find(words);
        return found.match() != FoundFoods.Match.ALL || found.yoursFirst()
                ? Optional.empty()
                : found.reference().stream()
                        .findFirst()
                        .filter(food -> food.ndb().startsWith(SPICES));
    }

    /** What one spoon of it weighs. */
    Optional<BigDecimal> seasoningGrams(String words, String measure) {
        Optional<Food> food = meant(words).food();
        if (food.isPresent()) {
            return food.flatMap(f -> kitchen.measure(f, measure)).map(Measure::grams);
        }
        return spice(words).map(measures::of).orElse(List.of()).stream()
                .filter(m -> m.description().split("[ ,]", 2)[0].equals(measure))
                .findFirst()
                .map(m -> new BigDecimal(m.grams()).divide(new BigDecimal(m.amount()), MathContext.DECIMAL64));
    }
}

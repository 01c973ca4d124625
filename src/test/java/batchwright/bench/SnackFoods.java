package batchwright.bench;

import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Pack;
import batchwright.quantity.Money;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Measure;
import batchwright.reference.Sr28Measures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Foods of USDA SR28 that somebody might eat as they come, such as fruit, nuts, dairy, bread: by food group, and without what says
 * it is raw meat, dry, or to be cooked. Prices are invented: 0.20 to 3.00 a pack of 100 g to 1 kg.
 */
final class SnackFoods {
    private static final Set<String> GROUPS = Set.of(
            "Dairy and Egg Products",
            "Fruits and Fruit Juices",
            "Nut and Seed Products",
            "Snacks",
            "Baked Products",
            "Breakfast Cereals",
            "Sweets");
    private static final Set<String> NOT_AS_IT_COMES =
            Set.of("raw", "dry", "dried", "frozen", "uncooked", "unprepared", "mix", "powder", "flour", "dough");
    private static final BigDecimal LEAST_GRAMS = BigDecimal.TEN;
    private static final BigDecimal MOST_GRAMS = BigDecimal.valueOf(250);
    private static final LocalDate SEEN = LocalDate.of(2026, 11, 1);

    private SnackFoods() {}

    record Offer(Food food, Measure measure, Pack pack) {}

    /** In the order of their numbers. */
    static List<Offer> all() {
        Sr28Measures measures = Sr28Measures.load();
        return Sr28.load().foods().stream()
                .filter(SnackFoods::isPlausible)
                .flatMap(food -> measures.of(food).stream()
                        .filter(SnackFoods::isAHelping)
                        .limit(1)
                        .map(measure -> offer(food, measure)))
                .toList();
    }

    private static boolean isPlausible(Sr28Food food) {
        boolean fruit = food.group().startsWith("Fruits");
        return GROUPS.contains(food.group())
                && food.amount(Nutrient.ENERGY).isPresent()
                && food.amount(Nutrient.FIBRE).isPresent()
                && food.words().stream()
                        .noneMatch(word -> NOT_AS_IT_COMES.contains(word) && !(fruit && word.equals("raw")));
    }

    private static boolean isAHelping(Sr28Measure measure) {
        BigDecimal grams = one(measure);
        return grams.compareTo(LEAST_GRAMS) >= 0 && grams.compareTo(MOST_GRAMS) <= 0;
    }

    private static BigDecimal one(Sr28Measure measure) {
        return new BigDecimal(measure.grams()).divide(new BigDecimal(measure.amount()), 1, RoundingMode.HALF_UP);
    }

    private static Offer offer(Sr28Food row, Sr28Measure measure) {
        Map<Nutrient, BigDecimal> values = new EnumMap<>(Nutrient.class);
        Nutrient.columns().forEach(n -> row.amount(n).ifPresent(amount -> values.put(n, amount)));
        var food = new Food(
                "sr28_" + row.ndb(),
                row.description(),
                row.group(),
                Optional.of(row.ndb()),
                row.description(),
                Nutrients.of(values),
                BigDecimal.ZERO,
                Set.of(),
                false);
        var random = new Random(Long.parseLong(row.ndb()));
        var grams = BigDecimal.valueOf(100L * (1 + random.nextInt(10)));
        var price = new Money(20 + random.nextInt(281));
        return new Offer(
                food,
                new Measure(food, measure.description(), one(measure), 2, "SR28 seq " + measure.sequence()),
                new Pack(food, "bench", "pack", grams, price, SEEN, "invented"));
    }
}

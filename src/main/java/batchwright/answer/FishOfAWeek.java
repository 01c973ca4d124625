package batchwright.answer;

import batchwright.food.Food;
import batchwright.food.hazard.FishMercury;
import batchwright.food.hazard.FishMercury.Advised;
import batchwright.plan.EatenFoods;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Works out the fish that an eater eats by a plan, for a week: its days are taken as if eaten on. */
final class FishOfAWeek {
    private static final BigDecimal WEEK = BigDecimal.valueOf(7);

    private final int days;
    private final Map<Food, BigDecimal> grams = new LinkedHashMap<>();

    /** @param eaten on one day at least */
    FishOfAWeek(EatenFoods eaten) {
        this.days = eaten.days();
        eaten.grams().forEach((food, amount) -> FishMercury.of(food).ifPresent(fish -> grams.put(food, amount)));
    }

    /** How many days the plan has. */
    int days() {
        return days;
    }

    /** Raw, in all days of the plan. */
    Map<Food, BigDecimal> grams() {
        return Collections.unmodifiableMap(grams);
    }

    /** Mercury in a week [ug]. */
    BigDecimal mercuryUg() {
        return aWeek(grams.entrySet().stream()
                .map(e -> ugPerG(e.getKey()).multiply(e.getValue()))
                .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static BigDecimal ugPerG(Food food) {
        return FishMercury.of(food).flatMap(FishMercury::ugPerG).orElse(BigDecimal.ZERO);
    }

    /**
     * Whether a week has no more servings than are advised for the worst kind in it.
     *
     * @param serving raw [g]
     */
    boolean isAsAdvised(BigDecimal serving) {
        BigDecimal all = aWeek(sum(Advised.values()));
        Advised worst = Stream.of(Advised.AVOID, Advised.GOOD)
                .filter(advised -> sum(advised).signum() > 0)
                .findFirst()
                .orElse(Advised.BEST);
        return all.compareTo(serving.multiply(BigDecimal.valueOf(worst.servings()))) <= 0;
    }

    private BigDecimal sum(Advised... classes) {
        return grams.entrySet().stream()
                .filter(e -> FishMercury.of(e.getKey())
                        .filter(fish -> List.of(classes).contains(fish.advised()))
                        .isPresent())
                .map(Map.Entry::getValue)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private BigDecimal aWeek(BigDecimal amount) {
        return amount.multiply(WEEK).divide(BigDecimal.valueOf(days), MathContext.DECIMAL64);
    }
}

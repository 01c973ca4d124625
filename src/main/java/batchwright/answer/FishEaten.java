package batchwright.answer;

import batchwright.food.Food;
import batchwright.food.hazard.FishMercury;
import batchwright.food.hazard.FishMercury.Advised;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.plan.EatenFoods;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Mercury in the fish of a plan, a week: its days are taken as if eaten on. No rule of the plan: what the authorities limit for those
 * who may become pregnant are servings, and what holds for everybody is tolerable for a lifetime, not for a week.
 */
final class FishEaten {
    private static final BigDecimal WEEK = BigDecimal.valueOf(7);
    private static final double OLDEST = 50;

    private final Body body;
    private final int days;
    private final Map<Food, BigDecimal> grams = new LinkedHashMap<>();

    private FishEaten(EatenFoods eaten) {
        this.body = eaten.eater().body();
        this.days = eaten.days();
        eaten.grams().forEach((food, amount) -> FishMercury.of(food).ifPresent(fish -> grams.put(food, amount)));
    }

    /** @param eaten on one day at least */
    static List<Caution> of(EatenFoods eaten) {
        var fish = new FishEaten(eaten);
        return Stream.of(fish.mercury(), fish.servings())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Caution> mercury() {
        Hazard rule = Hazard.of("fish_mercury");
        BigDecimal kg = BigDecimal.valueOf(body.weight().kg());
        BigDecimal most = rule.amount().multiply(kg);
        BigDecimal week = aWeek(grams.entrySet().stream()
                .map(e -> ugPerG(e.getKey()).multiply(e.getValue()))
                .reduce(BigDecimal.ZERO, BigDecimal::add));
        return week.compareTo(most) <= 0
                ? Optional.empty()
                : Optional.of(HazardCautions.of(
                        rule,
                        rule.code(),
                        Map.of(
                                "fish", says(),
                                "days", daysSay(),
                                "amount", whole(week),
                                "weight", whole(kg),
                                "most", whole(most))));
    }

    private static BigDecimal ugPerG(Food food) {
        return FishMercury.of(food).flatMap(FishMercury::ugPerG).orElse(BigDecimal.ZERO);
    }

    private Optional<Caution> servings() {
        boolean named = body.sex() == Sex.FEMALE && body.ageYears() <= OLDEST;
        Hazard rule = Hazard.of("fish_servings");
        return !named || isAsAdvised(rule.amount())
                ? Optional.empty()
                : Optional.of(HazardCautions.of(rule, rule.code(), Map.of("fish", says(), "days", daysSay())));
    }

    /** @param serving raw [g] */
    private boolean isAsAdvised(BigDecimal serving) {
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

    private String says() {
        return grams.entrySet().stream()
                .map(e -> whole(e.getValue()) + " g of " + e.getKey().name())
                .collect(Collectors.joining(" and "));
    }

    private String daysSay() {
        return days == 1 ? "1 day" : days + " days";
    }

    private static String whole(BigDecimal amount) {
        return amount.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}

package batchwright.answer;

import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.plan.EatenFoods;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Says what {@link FishOfAWeek} works out. No rule of the plan: what the authorities limit for those who may become pregnant are servings,
 * and what holds for everybody is tolerable for a lifetime, not for a week.
 */
final class FishEaten {
    private static final double OLDEST = 50;

    private final Body body;
    private final FishOfAWeek fish;

    private FishEaten(EatenFoods eaten) {
        this.body = eaten.eater().body();
        this.fish = new FishOfAWeek(eaten);
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
        BigDecimal week = fish.mercuryUg();
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

    private Optional<Caution> servings() {
        boolean named = body.sex() == Sex.FEMALE && body.ageYears() <= OLDEST;
        Hazard rule = Hazard.of("fish_servings");
        return !named || fish.isAsAdvised(rule.amount())
                ? Optional.empty()
                : Optional.of(HazardCautions.of(rule, rule.code(), Map.of("fish", says(), "days", daysSay())));
    }

    private String says() {
        return fish.grams().entrySet().stream()
                .map(e -> whole(e.getValue()) + " g of " + e.getKey().name())
                .collect(Collectors.joining(" and "));
    }

    private String daysSay() {
        return fish.days() == 1 ? "1 day" : fish.days() + " days";
    }

    private static String whole(BigDecimal amount) {
        return amount.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}

package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says what {@link SaltOfBatches} works out, beside the salt of a day of WHO. */
final class SaltToAdd {
    private SaltToAdd() {}

    /** What an average day holds of salt before any is added; empty for anyone not at the table. */
    static Optional<Caution> of(Plan plan, Eater eater) {
        Hazard rule = Hazard.of("salt");
        return plan.averageDay(eater).map(SaltOfBatches::salt).map(held -> {
            BigDecimal left = rule.amount().subtract(held);
            String then = left.signum() > 0
                    ? ": " + tenth(left, RoundingMode.DOWN) + " g are left."
                    : ": none is left, so add none.";
            return HazardCautions.of(
                    rule, rule.code(), Map.of("amount", tenth(held, RoundingMode.HALF_UP), "then", then));
        });
    }

    /** How much to add to the batches that take salt; empty when none does or nobody is known to eat them. */
    static Optional<Caution> ofBatches(Session session) {
        Map<Dish, SaltOfBatch> salt = SaltOfBatches.of(session);
        if (salt.isEmpty()) {
            return Optional.empty();
        }
        String dishes = session.batches().stream()
                .flatMap(batch -> Optional.ofNullable(salt.get(batch.dish())).map(s -> says(batch, s)).stream())
                .collect(Collectors.joining("; "));
        Hazard toAdd = Hazard.of("salt_to_add");
        return Optional.of(HazardCautions.of(toAdd, toAdd.code(), Map.of("dishes", dishes)));
    }

    /** Tagine (10): at most 12 g, where the recipe says 20 g. */
    private static String says(Batch batch, SaltOfBatch salt) {
        String most = salt.most() == 0 ? "none" : "at most " + salt.most() + " g";
        String recipe = salt.recipe()
                .map(grams -> (salt.isLessThanRecipe() ? ", where the recipe says " : "; the recipe says ")
                        + whole(grams) + " g")
                .orElse("");
        return batch.dish().name() + " (" + batch.containers() + "): " + most + recipe;
    }

    private static String whole(BigDecimal grams) {
        return grams.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    private static String tenth(BigDecimal grams, RoundingMode rounding) {
        return grams.setScale(1, rounding).toPlainString();
    }
}

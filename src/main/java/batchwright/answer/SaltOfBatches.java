package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Handled;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Staple;
import batchwright.food.hazard.Hazard;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Works out the salt of a session's batches, the one place that does. All that takes salt is salted alike, and no more than leaves each
 * eater within the salt of a day (WHO), with what the foods bring.
 */
public final class SaltOfBatches {
    private static final BigDecimal SALT_G_PER_SODIUM_MG = new BigDecimal("0.0025"); // Regulation (EU) 1169/2011
    private static final BigDecimal MOST_G_PER_KG = BigDecimal.valueOf(5); // common practice: lightly seasoned
    private static final BigDecimal G_PER_KG = BigDecimal.valueOf(1000);

    private final Session session;
    private final BigDecimal mostADay = Hazard.of("salt").amount();

    private SaltOfBatches(Session session) {
        this.session = session;
    }

    /** For each dish with salt among its staples; empty when nobody is known to eat them. */
    public static Map<Dish, SaltOfBatch> of(Session session) {
        var salt = new SaltOfBatches(session);
        Map<Dish, SaltOfBatch> all = new LinkedHashMap<>();
        if (!session.eaters().isEmpty()) {
            session.batches().stream()
                    .filter(batch -> takesSalt(batch.dish()))
                    .forEach(batch -> all.put(batch.dish(), new SaltOfBatch(recipe(batch), salt.grams(batch))));
        }
        return all;
    }

    private static Optional<BigDecimal> recipe(Batch batch) {
        return batch.dish().staples().stream()
                .filter(Staple::isSalt)
                .flatMap(salt -> batch.grams(new Handled.OfStaple(salt, BigDecimal.ONE)).stream())
                .reduce(BigDecimal::add);
    }

    /** What foods hold of salt before any is added [g]. */
    static BigDecimal salt(Nutrients day) {
        return day.get(Nutrient.SODIUM).multiply(SALT_G_PER_SODIUM_MG);
    }

    private int grams(Batch batch) {
        SaltedParts salted = SaltedParts.of(batch.dish());
        BigDecimal all = salted.grams(batch.fills());
        BigDecimal byDay = session.eaters().stream()
                .filter(eater -> salted(batch, eater.seat().eater()).signum() > 0)
                .map(eater -> leftInAll(eater)
                        .multiply(all)
                        .divide(salted(eater.seat().eater()), MathContext.DECIMAL64))
                .min(BigDecimal::compareTo)
                .orElse(BigDecimal.ZERO);
        BigDecimal byWeight = MOST_G_PER_KG
                .multiply(CookedWeight.of(batch))
                .divide(G_PER_KG, MathContext.DECIMAL64)
                .subtract(held(batch));
        return byDay.min(byWeight)
                .max(BigDecimal.ZERO)
                .setScale(0, RoundingMode.DOWN)
                .intValueExact();
    }

    /** What an eater has of the parts that take salt, in all batches [g]. */
    private BigDecimal salted(Eater eater) {
        return session.batches().stream()
                .filter(batch -> takesSalt(batch.dish()))
                .map(batch -> salted(batch, eater))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal salted(Batch batch, Eater eater) {
        return SaltedParts.of(batch.dish())
                .grams(batch.fills().stream().filter(fill -> fill.isFor(eater)).toList());
    }

    private BigDecimal leftInAll(EaterDays eater) {
        return leftADay(eater).multiply(BigDecimal.valueOf(eater.days().size()));
    }

    private BigDecimal leftADay(EaterDays eater) {
        return mostADay.subtract(held(eater)).max(BigDecimal.ZERO);
    }

    private BigDecimal held(EaterDays eater) {
        return salt(session.averageDay(eater));
    }

    private static BigDecimal held(Batch batch) {
        return batch.fills().stream()
                .map(fill -> salt(fill.perContainer()).multiply(BigDecimal.valueOf(fill.containers())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean takesSalt(Dish dish) {
        return dish.staples().stream().anyMatch(Staple::isSalt);
    }
}

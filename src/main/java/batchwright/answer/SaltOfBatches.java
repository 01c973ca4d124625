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
 * Works out the salt of a session's batches, the one place that does. What the foods leave of the salt of a day (WHO) is shared out among
 * an eater's containers that take salt, by weight.
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
        BigDecimal byDay =
                session.eaters().stream().map(eater -> share(batch, eater)).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal byWeight = MOST_G_PER_KG
                .multiply(CookedWeight.of(batch))
                .divide(G_PER_KG, MathContext.DECIMAL64)
                .subtract(held(batch));
        return byDay.min(byWeight)
                .max(BigDecimal.ZERO)
                .setScale(0, RoundingMode.DOWN)
                .intValueExact();
    }

    /** Of what is left for the eater in all days. */
    private BigDecimal share(Batch batch, EaterDays eater) {
        BigDecimal all = session.batches().stream()
                .filter(other -> takesSalt(other.dish()))
                .map(other -> cooked(other, eater.seat().eater()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return all.signum() == 0
                ? BigDecimal.ZERO
                : leftADay(eater)
                        .multiply(BigDecimal.valueOf(eater.days().size()))
                        .multiply(cooked(batch, eater.seat().eater()))
                        .divide(all, MathContext.DECIMAL64);
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

    private static BigDecimal cooked(Batch batch, Eater eater) {
        return batch.fills().stream()
                .filter(fill -> fill.isFor(eater))
                .map(CookedWeight::of)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean takesSalt(Dish dish) {
        return dish.staples().stream().anyMatch(Staple::isSalt);
    }
}

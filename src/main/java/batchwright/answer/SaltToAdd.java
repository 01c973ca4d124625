package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Handled;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Staple;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Salt beside the 5 g a day of WHO: what the foods of a plan hold, and what a cook may add. What is left for an eater is shared out
 * among their containers that take salt, by weight.
 */
public final class SaltToAdd {
    private static final BigDecimal SALT_G_PER_SODIUM_MG = new BigDecimal("0.0025"); // Regulation (EU) 1169/2011
    private static final BigDecimal MOST_G_PER_KG = BigDecimal.valueOf(5); // common practice: lightly seasoned
    private static final BigDecimal G_PER_KG = BigDecimal.valueOf(1000);
    private static final String SALT = "salt";

    private final Session session;
    private final BigDecimal mostADay = Hazard.of(SALT).amount();

    private SaltToAdd(Session session) {
        this.session = session;
    }

    /** What an average day holds of salt before any is added; empty for anyone not at the table. */
    static Optional<Caution> of(Plan plan, Eater eater) {
        Hazard rule = Hazard.of(SALT);
        return plan.averageDay(eater).map(SaltToAdd::salt).map(held -> {
            BigDecimal left = rule.amount().subtract(held);
            String then = left.signum() > 0
                    ? ": " + tenth(left, RoundingMode.DOWN) + " g are left."
                    : ": none is left, so add none.";
            return HazardCautions.of(
                    rule, rule.code(), Map.of("amount", tenth(held, RoundingMode.HALF_UP), "then", then));
        });
    }

    private static BigDecimal salt(Nutrients day) {
        return day.get(Nutrient.SODIUM).multiply(SALT_G_PER_SODIUM_MG);
    }

    /** How much to add to the batches that take salt; empty when none does or nobody is known to eat them. */
    static Optional<Caution> ofBatches(Session session) {
        Map<Dish, Integer> grams = grams(session);
        if (grams.isEmpty()) {
            return Optional.empty();
        }
        String dishes = session.batches().stream()
                .filter(batch -> grams.containsKey(batch.dish()))
                .map(batch -> batch.dish().name() + " (" + batch.containers() + "): "
                        + most(grams.getOrDefault(batch.dish(), 0)) + asWritten(batch))
                .collect(Collectors.joining("; "));
        Hazard toAdd = Hazard.of("salt_to_add");
        return Optional.of(HazardCautions.of(toAdd, toAdd.code(), Map.of("dishes", dishes)));
    }

    private static String asWritten(Batch batch) {
        return batch.dish().staples().stream()
                .filter(SaltToAdd::isSalt)
                .flatMap(salt -> batch.grams(new Handled.OfStaple(salt, BigDecimal.ONE)).stream())
                .map(grams -> ", where the recipe says " + grams.setScale(0, RoundingMode.HALF_UP) + " g")
                .collect(Collectors.joining());
    }

    private static boolean isSalt(Staple staple) {
        return staple.id().equals(SALT);
    }

    private static String most(int grams) {
        return grams == 0 ? "none" : "at most " + grams + " g";
    }

    /** The most salt to add to the whole batch [g], for each dish with salt among its staples. */
    public static Map<Dish, Integer> grams(Session session) {
        var salt = new SaltToAdd(session);
        Map<Dish, Integer> grams = new LinkedHashMap<>();
        if (!session.eaters().isEmpty()) {
            session.batches().stream()
                    .filter(batch -> takesSalt(batch.dish()))
                    .forEach(batch -> grams.put(batch.dish(), salt.grams(batch)));
        }
        return grams;
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
        return dish.staples().stream().anyMatch(SaltToAdd::isSalt);
    }

    private static String tenth(BigDecimal grams, RoundingMode rounding) {
        return grams.setScale(1, rounding).toPlainString();
    }
}

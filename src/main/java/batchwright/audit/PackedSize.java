package batchwright.audit;

import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.Ingredient;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What is packed weighs, and the room it takes, from the files' yields and densities. Each part takes the room of all that lies
 * loose or, if that is more, of its weight as a stew.
 */
final class PackedSize {
    private static final BigDecimal STEW_G_PER_ML = new BigDecimal("1.03");

    private PackedSize() {}

    /** In grams or millilitres; empty for anything that is not a size. */
    static Optional<BigDecimal> of(Known known, Dish dish, Fill fill, Nutrient size) {
        return switch (size) {
            case COOKED_WEIGHT, VOLUME -> {
                BigDecimal sum = BigDecimal.ZERO;
                for (Portion portion : fill.portions()) {
                    Optional<Part> part = known.part(dish, portion.part());
                    if (part.isPresent()) {
                        BigDecimal more = size == Nutrient.VOLUME
                                ? millilitres(part.get(), portion.rawGrams())
                                : grams(part.get(), portion.rawGrams());
                        sum = sum.add(more);
                    }
                }
                yield Optional.of(sum);
            }
            default -> Optional.empty();
        };
    }

    /** What so many raw grams of a part weigh when they are cooked. */
    static BigDecimal grams(Part part, int rawGrams) {
        BigDecimal written = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            written = written.add(cooked(part, ingredient));
        }
        return ofWritten(part, written, rawGrams);
    }

    private static BigDecimal millilitres(Part part, int rawGrams) {
        BigDecimal loose = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            BigDecimal density =
                    ingredient.cooked().flatMap(CookedYield::gramsPerMl).orElse(BigDecimal.ZERO);
            if (density.signum() > 0) {
                loose = loose.add(cooked(part, ingredient).divide(density, Tolerance.DIGITS));
            }
        }
        BigDecimal stew = grams(part, rawGrams).divide(STEW_G_PER_ML, Tolerance.DIGITS);
        return ofWritten(part, loose, rawGrams).max(stew);
    }

    private static BigDecimal ofWritten(Part part, BigDecimal amount, int rawGrams) {
        return amount.multiply(BigDecimal.valueOf(rawGrams)).divide(Eaten.whole(part), Tolerance.DIGITS);
    }

    /** What has no yield of its own bears the fat that is poured off, by how much fat it brings. */
    private static BigDecimal cooked(Part part, Ingredient ingredient) {
        if (ingredient.cooked().isPresent()) {
            return ingredient.amount().multiply(ingredient.cooked().get().factor());
        }
        BigDecimal poured = part.fatPouredOff().grams();
        if (poured.signum() == 0) {
            return ingredient.amount();
        }
        BigDecimal fat = BigDecimal.ZERO;
        for (Ingredient each : part.mix()) {
            fat = fat.add(fat(each));
        }
        return ingredient.amount().subtract(poured.multiply(fat(ingredient)).divide(fat, Tolerance.DIGITS));
    }

    private static BigDecimal fat(Ingredient ingredient) {
        return ingredient.amount().multiply(ingredient.food().per100g().get(Nutrient.FAT));
    }
}

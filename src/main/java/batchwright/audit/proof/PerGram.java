package batchwright.audit.proof;

import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import java.math.BigDecimal;
import java.math.MathContext;

/** What a raw gram of a part holds and takes, worked out from its recipe; a division is cut off after 34 digits. */
final class PerGram {
    private static final MathContext DIGITS = MathContext.DECIMAL128;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal KCAL_PER_G_OF_FAT = BigDecimal.valueOf(9);
    private static final BigDecimal STEW_G_PER_ML = new BigDecimal("1.03");

    private PerGram() {}

    /** In the nutrient's unit. */
    static BigDecimal of(Part part, Nutrient nutrient) {
        BigDecimal written = switch (nutrient) {
            case COOKED_WEIGHT -> cooked(part);
            case VOLUME -> loose(part).max(cooked(part).divide(STEW_G_PER_ML, DIGITS));
            default -> inMix(part, nutrient).subtract(pouredOff(part, nutrient));
        };
        return written.divide(whole(part), DIGITS);
    }

    /** Grams of a food as purchased. */
    static BigDecimal ofFood(Part part, Food food) {
        BigDecimal amount = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            if (ingredient.food().equals(food)) {
                amount = amount.add(ingredient.amount());
            }
        }
        return asPurchased(food, amount).divide(whole(part), DIGITS);
    }

    /** Edible grams turned into grams as purchased. */
    static BigDecimal asPurchased(Food food, BigDecimal edible) {
        return edible.multiply(HUNDRED).divide(HUNDRED.subtract(food.refusePercent()), DIGITS);
    }

    private static BigDecimal whole(Part part) {
        BigDecimal whole = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            whole = whole.add(ingredient.amount());
        }
        return whole;
    }

    /** In the recipe as written. */
    private static BigDecimal inMix(Part part, Nutrient nutrient) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            sum = sum.add(inIngredient(ingredient, nutrient));
        }
        return sum;
    }

    private static BigDecimal inIngredient(Ingredient ingredient, Nutrient nutrient) {
        return ingredient
                .food()
                .per100g()
                .get(nutrient)
                .multiply(ingredient.amount())
                .movePointLeft(2);
    }

    private static BigDecimal pouredOff(Part part, Nutrient nutrient) {
        BigDecimal fat = part.fatPouredOff().grams();
        if (fat.signum() == 0) {
            return BigDecimal.ZERO;
        }
        return switch (nutrient) {
            case FAT -> fat;
            case ENERGY -> fat.multiply(KCAL_PER_G_OF_FAT);
            case SATURATED_FAT ->
                fat.multiply(inMix(part, Nutrient.SATURATED_FAT)).divide(inMix(part, Nutrient.FAT), DIGITS);
            default -> BigDecimal.ZERO;
        };
    }

    private static BigDecimal cooked(Part part) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            sum = sum.add(cooked(part, ingredient));
        }
        return sum;
    }

    /** What has no yield of its own bears the fat that is poured off, by how much fat it brings. */
    private static BigDecimal cooked(Part part, Ingredient ingredient) {
        if (ingredient.cooked().isPresent()) {
            return ingredient.amount().multiply(ingredient.cooked().get().factor());
        }
        BigDecimal fat = part.fatPouredOff().grams();
        return fat.signum() == 0
                ? ingredient.amount()
                : ingredient
                        .amount()
                        .subtract(fat.multiply(inIngredient(ingredient, Nutrient.FAT))
                                .divide(inMix(part, Nutrient.FAT), DIGITS));
    }

    /** The room of what lies loose [ml]. */
    private static BigDecimal loose(Part part) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Ingredient ingredient : part.mix()) {
            BigDecimal density =
                    ingredient.cooked().flatMap(CookedYield::gramsPerMl).orElse(BigDecimal.ZERO);
            if (density.signum() > 0) {
                sum = sum.add(cooked(part, ingredient).divide(density, DIGITS));
            }
        }
        return sum;
    }
}

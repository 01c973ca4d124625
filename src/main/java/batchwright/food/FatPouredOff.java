package batchwright.food;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * Rendered fat that the cook pours off, so that nobody eats it. It takes with it its own weight of fat, energy at
 * 9 kcal/g (general Atwater factor of fat; the factor of meat fat in USDA SR28 is 9.02) and saturated fat in the proportion
 * in which the mix's fat holds it. Other nutrients are left as they are: what vitamins and minerals go with fat is not known.
 *
 * @param grams for the amounts of the mix as the recipe writes them
 */
public record FatPouredOff(BigDecimal grams) {
    public static final FatPouredOff NONE = new FatPouredOff(BigDecimal.ZERO);
    /** More of a mix's fat cannot be poured off: some stays in the food. A choice. */
    public static final BigDecimal MOST_SHARE = new BigDecimal("0.8");

    private static final BigDecimal KCAL_PER_G = BigDecimal.valueOf(9);
    private static final BigDecimal PER_CENT = new BigDecimal("0.01");

    public boolean isNone() {
        return grams.signum() == 0;
    }

    /** Fat in a mix as it is written, in g. */
    public static BigDecimal fatIn(List<Ingredient> mix) {
        return mix.stream().map(FatPouredOff::fatIn).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal fatIn(Ingredient ingredient) {
        return ingredient
                .food()
                .per100g()
                .get(Nutrient.FAT)
                .multiply(ingredient.amount())
                .multiply(PER_CENT);
    }

    /** What is left of the nutrients of 100 g of a raw part that weighs so many grams as written. */
    Nutrients leaves(Nutrients per100g, BigDecimal writtenGrams) {
        if (isNone()) {
            return per100g;
        }
        BigDecimal lost = grams.movePointRight(2).divide(writtenGrams, MathContext.DECIMAL64);
        BigDecimal saturated = per100g.get(Nutrient.SATURATED_FAT)
                .multiply(lost)
                .divide(per100g.get(Nutrient.FAT), MathContext.DECIMAL64);
        return per100g.less(Nutrient.FAT, lost)
                .less(Nutrient.SATURATED_FAT, saturated)
                .less(Nutrient.ENERGY, lost.multiply(KCAL_PER_G));
    }

    /**
     * Cooked grams of an ingredient of the mix as written. A cooked yield weighs what stays in the food, so it already leaves
     * out what runs off. An ingredient that has none loses its share of the fat, by how much of the mix's fat it brings.
     */
    BigDecimal cookedWeight(Ingredient ingredient, List<Ingredient> mix) {
        BigDecimal cooked = ingredient.amount().multiply(ingredient.yieldFactor());
        if (isNone() || ingredient.cooked().isPresent()) {
            return cooked;
        }
        return cooked.subtract(grams.multiply(fatIn(ingredient)).divide(fatIn(mix), MathContext.DECIMAL64));
    }
}

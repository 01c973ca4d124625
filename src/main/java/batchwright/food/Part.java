package batchwright.food;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What of a dish scales as one: a fixed mix of ingredients, with a range of raw grams per container.
 *
 * @param optional may be left out; if not left out, at least {@code leastGrams}
 * @param stepGrams portions are whole multiples of this: 5 g on a kitchen scale, or the weight of one piece
 * @param pieces whether a step is one whole piece (an egg, a scoop) rather than a mark on the scale
 * @param leastGrams least raw edible grams in a container, a multiple of the step
 * @param mostGrams most raw edible grams in a container, a multiple of the step
 * @param fatPouredOff what the cook pours off of the mix as written
 */
public record Part(
        String name,
        boolean optional,
        int stepGrams,
        boolean pieces,
        int leastGrams,
        int mostGrams,
        List<Ingredient> mix,
        FatPouredOff fatPouredOff) {
    /** Kitchen scales of home cooks are read to 5 g. */
    public static final int SCALE_STEP_GRAMS = 5;

    public Part {
        mix = List.copyOf(mix);
    }

    /** A part of which nothing is poured off. */
    public Part(
            String name,
            boolean optional,
            int stepGrams,
            boolean pieces,
            int leastGrams,
            int mostGrams,
            List<Ingredient> mix) {
        this(name, optional, stepGrams, pieces, leastGrams, mostGrams, mix, FatPouredOff.NONE);
    }

    /** Raw grams of the mix as written. */
    private BigDecimal writtenGrams() {
        return mix.stream().map(Ingredient::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Share of each food in the part's raw weight; together 1. */
    public Map<Food, BigDecimal> shares() {
        BigDecimal whole = writtenGrams();
        var shares = new LinkedHashMap<Food, BigDecimal>();
        mix.forEach(i -> shares.merge(i.food(), i.amount().divide(whole, MathContext.DECIMAL64), BigDecimal::add));
        return shares;
    }

    /** Nutrients per 100 g of the raw part, less what is poured off. */
    public Nutrients per100g() {
        Nutrients raw = shares().entrySet().stream()
                .map(e -> e.getKey().per100g().times(e.getValue()))
                .reduce(Nutrients::plus)
                .orElse(Nutrients.NONE);
        return fatPouredOff.leaves(raw, writtenGrams());
    }

    /** Grams of fat to pour off of so many raw grams of the part. */
    public BigDecimal fatToPourOff(BigDecimal rawGrams) {
        return rawGrams.multiply(fatPouredOff.grams()).divide(writtenGrams(), MathContext.DECIMAL64);
    }

    /** Cooked weight / raw weight of the whole part. */
    public BigDecimal yieldFactor() {
        return mix.stream()
                .map(ingredient -> fatPouredOff.cookedWeight(ingredient, mix))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(writtenGrams(), MathContext.DECIMAL64);
    }
}

package batchwright.food;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What of a dish scales as one: a fixed mix of ingredients, with a range of raw grams per container. What follows from the mix is
 * worked out once: a search asks for it thousands of times.
 */
public final class Part {
    /** Kitchen scales of home cooks are read to 5 g. */
    public static final int SCALE_STEP_GRAMS = 5;
    /** Soups and sauces: the median of those in USDA SR28 [g/ml]. */
    private static final BigDecimal STEW_GRAMS_PER_ML = new BigDecimal("1.03");

    private final String name;
    private final boolean optional;
    private final int stepGrams;
    private final boolean pieces;
    private final int leastGrams;
    private final int mostGrams;
    private final List<Ingredient> mix;
    private final FatPouredOff fatPouredOff;

    private @Nullable Map<Food, BigDecimal> shares;
    private @Nullable Nutrients per100g;

    /**
     * @param optional may be left out; if not left out, at least {@code leastGrams}
     * @param stepGrams portions are whole multiples of this: 5 g on a kitchen scale, or the weight of one piece
     * @param pieces whether a step is one whole piece (an egg, a scoop) rather than a mark on the scale
     * @param leastGrams least raw edible grams in a container, a multiple of the step
     * @param mostGrams most raw edible grams in a container, a multiple of the step
     * @param fatPouredOff what the cook pours off of the mix as written
     */
    public Part(
            String name,
            boolean optional,
            int stepGrams,
            boolean pieces,
            int leastGrams,
            int mostGrams,
            List<Ingredient> mix,
            FatPouredOff fatPouredOff) {
        this.name = name;
        this.optional = optional;
        this.stepGrams = stepGrams;
        this.pieces = pieces;
        this.leastGrams = leastGrams;
        this.mostGrams = mostGrams;
        this.mix = List.copyOf(mix);
        this.fatPouredOff = fatPouredOff;
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

    /** The same of another mix. */
    Part with(List<Ingredient> other) {
        return new Part(name, optional, stepGrams, pieces, leastGrams, mostGrams, other, fatPouredOff);
    }

    /**
     * The same as it came out of the pot: of other amounts, and all of it at one cooked weight.
     *
     * @param went raw grams of each food of the mix
     * @param factor cooked / raw weight
     */
    public Part asCooked(Map<Food, BigDecimal> went, BigDecimal factor) {
        BigDecimal all = went.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<Ingredient> cooked = new ArrayList<>();
        shares().forEach((food, share) -> {
            BigDecimal grams = went.getOrDefault(food, BigDecimal.ZERO)
                    .multiply(writtenGrams())
                    .divide(all, MathContext.DECIMAL64);
            var weighed = new CookedYield(food, "in the pot", factor, "checked", "weighed", density(food));
            cooked.add(new Ingredient(food, grams, Optional.of(weighed)));
        });
        return new Part(name, optional, SCALE_STEP_GRAMS, false, leastGrams, mostGrams, cooked, fatPouredOff);
    }

    private Optional<BigDecimal> density(Food food) {
        return mix.stream()
                .filter(ingredient -> ingredient.food().equals(food))
                .findFirst()
                .flatMap(Ingredient::cooked)
                .flatMap(CookedYield::gramsPerMl);
    }

    public String name() {
        return name;
    }

    public boolean optional() {
        return optional;
    }

    public int stepGrams() {
        return stepGrams;
    }

    public boolean pieces() {
        return pieces;
    }

    public int leastGrams() {
        return leastGrams;
    }

    public int mostGrams() {
        return mostGrams;
    }

    public List<Ingredient> mix() {
        return mix;
    }

    public FatPouredOff fatPouredOff() {
        return fatPouredOff;
    }

    /** Raw grams of the mix as written. */
    public BigDecimal writtenGrams() {
        return mix.stream().map(Ingredient::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Share of each food in the part's raw weight; together 1. */
    public Map<Food, BigDecimal> shares() {
        Map<Food, BigDecimal> known = shares;
        if (known == null) {
            known = Collections.unmodifiableMap(sharesOfMix());
            shares = known;
        }
        return known;
    }

    private Map<Food, BigDecimal> sharesOfMix() {
        BigDecimal whole = writtenGrams();
        var shares = new LinkedHashMap<Food, BigDecimal>();
        mix.forEach(i -> shares.merge(i.food(), i.amount().divide(whole, MathContext.DECIMAL64), BigDecimal::add));
        return shares;
    }

    /** Nutrients, cooked weight and volume per 100 g of the raw part, less what is poured off. */
    public Nutrients per100g() {
        Nutrients known = per100g;
        if (known == null) {
            known = per100gOfMix();
            per100g = known;
        }
        return known;
    }

    private Nutrients per100gOfMix() {
        Nutrients raw = shares().entrySet().stream()
                .map(e -> e.getKey().per100g().times(e.getValue()))
                .reduce(Nutrients::plus)
                .orElse(Nutrients.NONE);
        BigDecimal perHundred = BigDecimal.valueOf(100);
        return fatPouredOff
                .leaves(raw, writtenGrams())
                .with(Nutrient.COOKED_WEIGHT, yieldFactor().multiply(perHundred))
                .with(Nutrient.VOLUME, millilitresPerGram().multiply(perHundred));
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

    /**
     * The room that a raw gram takes in a box once it is cooked [ml]. Sauce fills the gaps between what lies loose: so it is the
     * room of what is known to lie loose alone or, if that is more, of everything as dense as a stew. Parts lie side by side.
     */
    private BigDecimal millilitresPerGram() {
        BigDecimal loose = BigDecimal.ZERO;
        for (Ingredient ingredient : mix) {
            Optional<BigDecimal> density = ingredient.cooked().flatMap(CookedYield::gramsPerMl);
            if (density.isPresent()) {
                BigDecimal cooked = fatPouredOff.cookedWeight(ingredient, mix);
                loose = loose.add(cooked.divide(density.get(), MathContext.DECIMAL64));
            }
        }
        BigDecimal asStew = yieldFactor().divide(STEW_GRAMS_PER_ML, MathContext.DECIMAL64);
        return loose.divide(writtenGrams(), MathContext.DECIMAL64).max(asStew);
    }

    /** Two parts are the same when all that is written of them is. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Part that
                && name.equals(that.name)
                && optional == that.optional
                && stepGrams == that.stepGrams
                && pieces == that.pieces
                && leastGrams == that.leastGrams
                && mostGrams == that.mostGrams
                && mix.equals(that.mix)
                && fatPouredOff.equals(that.fatPouredOff);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, leastGrams, mostGrams);
    }

    @Override
    public String toString() {
        return name;
    }
}

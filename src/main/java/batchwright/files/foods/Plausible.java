package batchwright.files.foods;

import static batchwright.food.Nutrient.CARBOHYDRATE;
import static batchwright.food.Nutrient.ENERGY;
import static batchwright.food.Nutrient.FAT;
import static batchwright.food.Nutrient.FIBRE;
import static batchwright.food.Nutrient.PROTEIN;
import static batchwright.food.Nutrient.SATURATED_FAT;
import static batchwright.food.Nutrient.SODIUM;
import static batchwright.food.Nutrient.SUGAR;
import static batchwright.food.Nutrient.WATER;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.food.Nutrient;
import batchwright.quantity.Energy;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Whether the figures of a food can belong together. The limits for the catalogue were tried on all 8,789 foods of USDA
 * SR28: they refuse none, and warn of 51 whose energy is far from the general factors, which is why that is only a warning.
 */
final class Plausible {
    /** Some tables round saturated fat to more decimals than fat. */
    private static final BigDecimal DECIMALS = new BigDecimal("0.1");

    private static final BigDecimal ROUNDING = new BigDecimal("0.5");
    /** Labels round protein, fat and carbohydrate, half a gram each. */
    private static final BigDecimal ROUNDING_OF_LABELS = new BigDecimal("1.5");

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final double ENERGY_TOLERANCE = 0.25;
    private static final double ENERGY_TOLERANCE_KCAL = 20;
    /** Beer and wine hold 86 to 95 g in 100 g. */
    private static final double WATER_OF_DRINKS = 80;

    private static final Map<Nutrient, NumberRange> RANGES = new EnumMap<>(Nutrient.class);

    static {
        Nutrient.columns().forEach(nutrient -> RANGES.put(nutrient, newRange(nutrient)));
    }

    private final Figures figures;
    private final Function<Nutrient, Written> cells;
    private final Problems problems;

    /** @param cells where a nutrient stands in the file */
    Plausible(Figures figures, Function<Nutrient, Written> cells, Problems problems) {
        this.figures = figures;
        this.cells = cells;
        this.problems = problems;
    }

    /** What can be in 100 g. */
    static NumberRange range(Nutrient nutrient) {
        return Objects.requireNonNull(RANGES.get(nutrient));
    }

    private static NumberRange newRange(Nutrient nutrient) {
        if (nutrient == SODIUM) {
            // 22.990 g of sodium in 58.443 g of sodium chloride (molar masses).
            return NumberRange.of(nutrient.label(), "0", "39340", nutrient.unit(), "100 g of pure salt hold no more");
        }
        String most = switch (nutrient.unit()) {
            case "kcal" -> "902";
            case "mg" -> "100000";
            case "ug" -> "100000000";
            default -> "100";
        };
        String why = nutrient == ENERGY ? "pure fat has 902 kcal in 100 g" : "100 g of a food hold no more";
        return NumberRange.of(nutrient.label(), "0", most, nutrient.unit(), why);
    }

    /** A row of the catalogue. */
    void check() {
        if (figures.states(PROTEIN, FAT, CARBOHYDRATE, ENERGY)) {
            int before = problems.errors();
            sum(ROUNDING);
            if (problems.errors() == before) {
                energy();
            }
        }
        notMore(SATURATED_FAT, FAT, DECIMALS);
        notMore(FIBRE, CARBOHYDRATE, ROUNDING);
    }

    /**
     * The weights on a label. Sugar may not be more than carbohydrate, as it is for some foods of tables that measure sugar
     * and carbohydrate apart: a label takes both from one analysis.
     */
    void checkLabel() {
        int before = problems.errors();
        sum(ROUNDING_OF_LABELS);
        if (problems.errors() == before) {
            sumWithSalt();
        }
        notMore(SATURATED_FAT, FAT, DECIMALS);
        notMore(SUGAR, CARBOHYDRATE, DECIMALS);
        if (figures.fibreInside()) {
            notMore(FIBRE, CARBOHYDRATE, ROUNDING);
        }
    }

    private void sum(BigDecimal rounding) {
        BigDecimal sum = figures.macros();
        BigDecimal most = figures.grams();
        if (sum.compareTo(most.add(rounding)) > 0) {
            String what =
                    figures.fibreInside() ? "protein, fat and carbohydrate" : "protein, fat, carbohydrate and fibre";
            problems.error(
                    cells.apply(PROTEIN),
                    "%s together are %s g in %s g".formatted(what, sum.toPlainString(), most.toPlainString()),
                    "expected at most %s g: %s".formatted(most.toPlainString(), reason()));
        }
    }

    /** Salt that alone is more than the food is told elsewhere. */
    private void sumWithSalt() {
        BigDecimal salt = figures.saltOfSodium();
        BigDecimal sum = figures.macros().add(salt);
        BigDecimal most = figures.grams();
        if (salt.compareTo(most) <= 0 && sum.compareTo(most.add(ROUNDING_OF_LABELS)) > 0) {
            problems.error(
                    cells.apply(SODIUM),
                    "with %s g salt everything together is %s g in %s g"
                            .formatted(whole(salt), whole(sum), most.toPlainString()),
                    "expected at most %s g: look for a point in the wrong place, or for mg"
                            .formatted(most.toPlainString()));
        }
    }

    private static String whole(BigDecimal grams) {
        return grams.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    private String reason() {
        if (!figures.fibreInside() && figures.readOtherwise().macros().compareTo(figures.grams()) <= 0) {
            return "if carbohydrate holds the fibre, label is us";
        }
        return figures.grams().compareTo(HUNDRED) == 0
                ? "look for a point in the wrong place"
                : "look for a point in the wrong place, or for the figures of 100 g";
    }

    private void notMore(Nutrient part, Nutrient whole, BigDecimal tolerance) {
        if (figures.states(part, whole) && grams(part).compareTo(grams(whole).add(tolerance)) > 0) {
            problems.error(
                    cells.apply(part),
                    "%s %s g is more than %s %s g".formatted(part.label(), grams(part), whole.label(), grams(whole)),
                    "expected at most %s g: %s includes %s".formatted(grams(whole), whole.label(), part.label()));
        }
    }

    /**
     * The catalogue has factors made for each food: only a large difference from the general ones is worth a word. Some fibre
     * gives nothing, as in cocoa. Alcohol is no column: it may be what a drink does not account for.
     */
    private void energy() {
        double sum = figures.kcalOfMacros();
        double withoutFibre = sum - LabelFactors.kcal(0, 0, 0, figures.number(FIBRE));
        double kcal = figures.number(ENERGY);
        if (isNear(Math.min(Math.max(kcal, withoutFibre), sum + 7 * mostAlcohol()), kcal)) {
            return;
        }
        boolean kilojoules = isNear(sum, kcal / Energy.KJ_PER_KCAL);
        problems.warning(
                cells.apply(ENERGY).at(),
                "energy is %s kcal, but protein, fat and carbohydrate give about %s kcal"
                        .formatted(grams(ENERGY), BigDecimal.valueOf(sum).setScale(0, RoundingMode.HALF_UP)),
                kilojoules
                        ? "this looks like kJ: divide it by 4.184"
                        : "compare all four figures with the label; only alcohol or acids explain a large difference");
    }

    /** What 100 g of a drink hold besides water and macros, g; 0 for other foods, so that a lost figure is still noticed. */
    private double mostAlcohol() {
        double water = grams(WATER).doubleValue();
        double rest = 100
                - water
                - grams(PROTEIN).doubleValue()
                - grams(FAT).doubleValue()
                - grams(CARBOHYDRATE).doubleValue();
        return water < WATER_OF_DRINKS ? 0 : Math.max(0, rest);
    }

    private static boolean isNear(double sum, double kcal) {
        return Math.abs(sum - kcal) <= Math.max(ENERGY_TOLERANCE_KCAL, ENERGY_TOLERANCE * Math.max(sum, kcal));
    }

    /** Unknown counts as none here, which only makes the check milder. */
    private BigDecimal grams(Nutrient nutrient) {
        return figures.get(nutrient);
    }
}

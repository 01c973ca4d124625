package batchwright.files;

import static batchwright.food.Nutrient.CARBOHYDRATE;
import static batchwright.food.Nutrient.ENERGY;
import static batchwright.food.Nutrient.FAT;
import static batchwright.food.Nutrient.FIBRE;
import static batchwright.food.Nutrient.PROTEIN;
import static batchwright.food.Nutrient.SATURATED_FAT;
import static batchwright.food.Nutrient.WATER;

import batchwright.food.Nutrient;
import batchwright.quantity.Energy;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Whether the figures of a food can belong together. The limits were tried on all 8,789 foods of USDA SR28: they refuse
 * none, and warn of 51 whose energy is far from the general factors, which is why that is only a warning.
 */
final class Plausible {
    private static final BigDecimal GRAMS = new BigDecimal("100.5");
    /** Some tables round saturated fat to more decimals than fat. */
    private static final BigDecimal DECIMALS = new BigDecimal("0.1");

    private static final BigDecimal ROUNDING = new BigDecimal("0.5");
    private static final double ENERGY_TOLERANCE = 0.25;
    private static final double ENERGY_TOLERANCE_KCAL = 20;
    /** Beer and wine hold 86 to 95 g in 100 g. */
    private static final double WATER_OF_DRINKS = 80;

    private static final Map<Nutrient, Range> RANGES = new EnumMap<>(Nutrient.class);

    static {
        Nutrient.columns().forEach(nutrient -> RANGES.put(nutrient, newRange(nutrient)));
    }

    private final Row row;
    private final Map<Nutrient, BigDecimal> values;
    private final Problems problems;

    Plausible(Row row, Map<Nutrient, BigDecimal> values, Problems problems) {
        this.row = row;
        this.values = values;
        this.problems = problems;
    }

    /** What can be in 100 g. */
    static Range range(Nutrient nutrient) {
        return Objects.requireNonNull(RANGES.get(nutrient));
    }

    private static Range newRange(Nutrient nutrient) {
        String most = switch (nutrient.unit()) {
            case "kcal" -> "902";
            case "mg" -> "100000";
            case "ug" -> "100000000";
            default -> "100";
        };
        String why = nutrient == ENERGY ? "pure fat has 902 kcal in 100 g" : "100 g of a food hold no more";
        return Range.of(nutrient.label(), "0", most, nutrient.unit(), why);
    }

    void check() {
        if (values.keySet().containsAll(List.of(PROTEIN, FAT, CARBOHYDRATE, ENERGY))) {
            int before = problems.errors();
            sum();
            if (problems.errors() == before) {
                energy();
            }
        }
        notMore(SATURATED_FAT, FAT, DECIMALS);
        notMore(FIBRE, CARBOHYDRATE, ROUNDING);
    }

    private void sum() {
        BigDecimal sum = grams(PROTEIN).add(grams(FAT)).add(grams(CARBOHYDRATE));
        if (sum.compareTo(GRAMS) > 0) {
            problems.error(
                    row.cell(PROTEIN.tagname()),
                    "protein, fat and carbohydrate together are %s g in 100 g".formatted(sum.toPlainString()),
                    "expected at most 100 g: look for a point in the wrong place");
        }
    }

    private void notMore(Nutrient part, Nutrient whole, BigDecimal tolerance) {
        if (values.containsKey(part)
                && values.containsKey(whole)
                && grams(part).compareTo(grams(whole).add(tolerance)) > 0) {
            problems.error(
                    row.cell(part.tagname()),
                    "%s %s g is more than %s %s g".formatted(part.label(), grams(part), whole.label(), grams(whole)),
                    "expected at most %s g: %s includes %s".formatted(grams(whole), whole.label(), part.label()));
        }
    }

    /**
     * General factors: protein 4, fat 9, available carbohydrate 4, fibre 2 kcal/g, alcohol 7 (Regulation (EU) 1169/2011, Annex
     * XIV). Some fibre gives nothing, as in cocoa. Alcohol is no column: it may be what a drink does not account for.
     */
    private void energy() {
        double fibre = grams(FIBRE).doubleValue();
        double withoutFibre = 4 * grams(PROTEIN).doubleValue()
                + 9 * grams(FAT).doubleValue()
                + 4 * (grams(CARBOHYDRATE).doubleValue() - fibre);
        double sum = withoutFibre + 2 * fibre;
        double kcal = grams(ENERGY).doubleValue();
        if (isNear(Math.min(Math.max(kcal, withoutFibre), sum + 7 * mostAlcohol()), kcal)) {
            return;
        }
        boolean kilojoules = isNear(sum, kcal / Energy.KJ_PER_KCAL);
        problems.warning(
                row.cell(ENERGY.tagname()).at(),
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
        return values.getOrDefault(nutrient, BigDecimal.ZERO);
    }
}

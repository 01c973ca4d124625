package batchwright.files.foods;

import static batchwright.food.Nutrient.ENERGY;
import static batchwright.food.Nutrient.FIBRE;

import batchwright.files.value.Problems;
import batchwright.quantity.Energy;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Energy of a label beside its protein, fat, carbohydrate and fibre. Labels are worked out from these, so a difference
 * beyond 15 % and beyond rounding is a slip in copying, or there is something else in the food: a warning with the likely
 * reason. Only an energy that cannot be is an error.
 */
final class LabelEnergyCheck {
    /** Pure fat in USDA SR28, the most of any food there [kcal/g]. */
    private static final double MOST_KCAL = 9.02;

    private static final double FIBRE_KCAL = 2;

    private final Label label;
    private final Figures figures;
    private final double kcal;
    private final Written cell;
    private final Problems problems;

    /** @param cell where the energy stands */
    LabelEnergyCheck(Label label, Written cell, Problems problems) {
        this.label = label;
        this.figures = label.figures();
        this.kcal = figures.number(ENERGY);
        this.cell = cell;
        this.problems = problems;
    }

    void check() {
        double rounding = label.kind().toleranceKcal();
        double most = MOST_KCAL * figures.grams().doubleValue() + rounding;
        if (kcal > most) {
            problems.error(
                    cell,
                    "energy %s is more than %s g of pure fat have"
                            .formatted(label.energy().shown(), figures.grams().toPlainString()),
                    new LikelySlip(label).reason().orElse("expected at most %s kcal".formatted(whole(most))));
        } else {
            bothUnits();
            if (!MacroEnergy.fits(figures, kcal, rounding)) {
                macros();
            }
        }
    }

    private void bothUnits() {
        if (!label.energy().agrees(label.kind().roundingKcal())) {
            BigDecimal kilojoules = label.energy().statedKilojoules().orElseThrow();
            problems.warning(
                    cell.at(),
                    "%s kJ and %s kcal are not the same energy"
                            .formatted(
                                    kilojoules.toPlainString(),
                                    figures.get(ENERGY).toPlainString()),
                    "expected about %s kcal for these kJ; the kcal are used"
                            .formatted(whole(kilojoules.doubleValue() / Energy.KJ_PER_KCAL)));
        }
    }

    private void macros() {
        String wrong = "energy is %s, but protein, fat and carbohydrate give about %s kcal"
                .formatted(label.energy().shown(), whole(figures.kcalOfMacros()));
        if (kcal == 0) {
            problems.error(
                    cell, wrong, "expected the energy on the label; a plan would take this for food without energy");
        } else {
            problems.warning(cell.at(), wrong, new LikelySlip(label).reason().orElseGet(this::explanation));
        }
    }

    /** When no single slip explains it. */
    private String explanation() {
        double more = kcal - figures.kcalOfMacros();
        double fibre = more / FIBRE_KCAL;
        double rest = figures.grams().subtract(figures.macros()).doubleValue();
        if (more > 0 && !figures.fibreInside() && !figures.states(FIBRE) && fibre <= rest) {
            return "fibre is not stated; about %s g of it would explain this".formatted(whole(fibre));
        }
        return more > 0
                ? "compare every figure with the label; alcohol (7 kcal/g) or acids (3 kcal/g) may explain it"
                : "compare every figure with the label; sweeteners may explain it: state polyols in polyols_g";
    }

    private static String whole(double value) {
        return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}

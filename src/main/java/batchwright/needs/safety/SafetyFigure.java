package batchwright.needs.safety;

import batchwright.needs.evidence.Citation;
import batchwright.text.ResourceTable;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A limit that is one figure, with its source: a row of figures.csv, which says the unit. */
public enum SafetyFigure {
    LOSS_PERCENT_A_WEEK_SLOW,
    LOSS_PERCENT_A_WEEK,
    LOSS_KG_A_WEEK,
    LOSS_KCAL_A_DAY,
    LOSS_KCAL_A_DAY_FROM_65,
    LOSS_PERCENT_OF_TOTAL,
    GAIN_PERCENT_A_WEEK_SLOW,
    GAIN_PERCENT_A_WEEK,
    GAIN_PERCENT_A_WEEK_USUAL,
    GAIN_PERCENT_OF_TOTAL,
    GAIN_KCAL_A_DAY,
    END_BMI,
    END_BMI_FROM_65,
    END_BMI_FROM_70,
    END_FAT_PERCENT_MALE,
    END_FAT_PERCENT_FEMALE,
    FAT_ERROR_ALLOWED_MALE,
    FAT_ERROR_ALLOWED_FEMALE,
    INTAKE_LEAST,
    INTAKE_LEAST_LOSS_FEMALE,
    INTAKE_LEAST_LOSS_MALE,
    ENERGY_AVAILABILITY_LOW,
    ENERGY_AVAILABILITY_TOO_LOW,
    ENERGY_AVAILABILITY_BMI;

    private static final int VALUE = 1;
    private static final int SOURCE = 3;
    private static final Map<String, List<String>> ROWS =
            ResourceTable.withCommas(SafetyFigure.class, "figures.csv", SOURCE + 1).stream()
                    .collect(Collectors.toUnmodifiableMap(cells -> cells.get(0), cells -> cells));

    public double value() {
        return Double.parseDouble(row().get(VALUE));
    }

    public Citation source() {
        return new Citation(row().get(SOURCE));
    }

    private List<String> row() {
        String name = name().toLowerCase(Locale.ROOT);
        List<String> row = ROWS.get(name);
        if (row == null) {
            throw new IllegalStateException("figures.csv has no row " + name + ".");
        }
        return row;
    }
}

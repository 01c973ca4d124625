package batchwright.files.foods;

import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.util.Locale;
import java.util.Optional;

/** By which rules a label is written: they decide what it calls carbohydrate, and how roughly it rounds. */
enum LabelKind {
    /**
     * Regulation (EU) 1169/2011: carbohydrate leaves the fibre out, and fibre counts 2 kcal/g. Four figures of 10 g and
     * more are rounded to 1 g, which makes half of 4 + 4 + 9 + 2 kcal at most.
     */
    EU(false, 10, 1),
    /**
     * 21 CFR 101.9: carbohydrate holds the fibre, which may count from nothing to 4 kcal/g. Energy is rounded to 10 kcal on
     * top of the macros.
     */
    US(true, 15, 5);

    private final boolean fibreInside;
    private final double toleranceKcal;
    private final double roundingKcal;

    LabelKind(boolean fibreInside, double toleranceKcal, double roundingKcal) {
        this.fibreInside = fibreInside;
        this.toleranceKcal = toleranceKcal;
        this.roundingKcal = roundingKcal;
    }

    static Optional<LabelKind> read(Written written, Problems problems) {
        String word = written.text().toUpperCase(Locale.ROOT);
        for (LabelKind kind : values()) {
            if (kind.name().equals(word)) {
                return Optional.of(kind);
            }
        }
        problems.error(
                written,
                "there is no kind of label called " + written.quoted(),
                "expected eu (carbohydrate without fibre) or us (carbohydrate with fibre)");
        return Optional.empty();
    }

    /** Whether carbohydrate holds the fibre. */
    boolean fibreInside() {
        return fibreInside;
    }

    /** How far energy and macros may be apart by rounding alone [kcal, for the stated amount of food]. */
    double toleranceKcal() {
        return toleranceKcal;
    }

    /** How far energy itself may be rounded [kcal]. */
    double roundingKcal() {
        return roundingKcal;
    }
}

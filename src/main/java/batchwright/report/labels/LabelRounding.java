package batchwright.report.labels;

import batchwright.food.Nutrients;
import java.util.List;
import java.util.Locale;

/** By whose rules a label's figures are rounded. Only labels ask: nothing is worked out from a rounded figure. */
public enum LabelRounding {
    US,
    EU;

    /** A figure as it is printed: its name, and its rounded amount with the unit. */
    record Figure(String name, String amount) {}

    /** The rules themselves. */
    public interface Rules {
        /** Such as: rounded by 21 CFR 101.9. */
        String says();

        /** The same in short, for the label itself. */
        String tag();

        /** Energy first, then what it is made of. */
        List<Figure> of(Nutrients container);
    }

    /** As on the command line: us. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Rules rules() {
        return this == US ? new UsLabelRounding() : new EuLabelRounding();
    }
}

package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.Objects;

/** Refuses values that no snack can have; the message names the value and the rule. */
final class Check {
    private Check() {}

    static void notNegative(String name, BigDecimal value) {
        Objects.requireNonNull(value, name);
        if (value.signum() < 0) {
            throw new IllegalArgumentException(name + " (" + value.toPlainString() + ") must be at least 0.");
        }
    }

    static void atLeast(String name, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(name + " (" + value + ") must be at least " + least + ".");
        }
    }
}

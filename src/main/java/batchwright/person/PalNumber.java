package batchwright.person;

import java.math.BigDecimal;

/** A physical activity level given as a number. */
public record PalNumber(double pal) implements PhysicalActivity {
    @Override
    public String label() {
        return BigDecimal.valueOf(pal).stripTrailingZeros().toPlainString();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.number(this);
    }
}

package batchwright.person;

import java.util.Locale;

/**
 * A level of activity of FAO/WHO/UNU, Human energy requirements, Rome 2004: its PAL is that of the worked day in Table 5.1, its
 * band that of the level. The band of {@link #ACTIVE} was seen there; the other bands are from memory, not seen.
 */
public enum FaoLevel implements PhysicalActivity {
    SEDENTARY(1.53, 1.40, 1.69),
    ACTIVE(1.76, 1.70, 1.99),
    VIGOROUS(2.25, 2.00, 2.40);

    private final double pal;
    private final double leastPal;
    private final double mostPal;

    FaoLevel(double pal, double leastPal, double mostPal) {
        this.pal = pal;
        this.leastPal = leastPal;
        this.mostPal = mostPal;
    }

    @Override
    public double pal() {
        return pal;
    }

    public double leastPal() {
        return leastPal;
    }

    public double mostPal() {
        return mostPal;
    }

    @Override
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.level(this);
    }
}

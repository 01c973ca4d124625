package batchwright.quantity;

/** A share of a whole, from 0 to 1 (body fat, refuse, a tolerance). */
public record Share(double fraction) {
    private static final double PER_CENT = 100;

    public Share {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("fraction (" + fraction + ") must be from 0 to 1.");
        }
    }

    public static Share ofPercent(double percent) {
        return new Share(percent / PER_CENT);
    }

    public double percent() {
        return fraction * PER_CENT;
    }
}

package batchwright.quantity;

/** Energy, or energy a day [kcal]; finite. Differences may be negative. */
public record Energy(double kcal) implements Comparable<Energy> {
    /** Thermochemical calorie, exact by definition. */
    public static final double KJ_PER_KCAL = 4.184;

    public Energy {
        if (!Double.isFinite(kcal)) {
            throw new IllegalArgumentException("kcal (" + kcal + ") must be finite.");
        }
    }

    public static Energy ofKilojoules(double kj) {
        return new Energy(kj / KJ_PER_KCAL);
    }

    public double kilojoules() {
        return kcal * KJ_PER_KCAL;
    }

    public Energy times(double factor) {
        return new Energy(kcal * factor);
    }

    @Override
    public int compareTo(Energy other) {
        return Double.compare(kcal, other.kcal);
    }
}

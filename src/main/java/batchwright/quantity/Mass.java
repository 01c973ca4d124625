package batchwright.quantity;

/** Mass of a body or a part of it [kg]; finite and positive. Foods are weighed in decimal grams instead. */
public record Mass(double kg) {
    /** International avoirdupois pound, exact by definition. */
    public static final double KG_PER_LB = 0.45359237;

    public Mass {
        if (!Double.isFinite(kg) || kg <= 0) {
            throw new IllegalArgumentException("kg (" + kg + ") must be finite and > 0.");
        }
    }

    public static Mass ofPounds(double lb) {
        return new Mass(lb * KG_PER_LB);
    }
}

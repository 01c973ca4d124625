package batchwright.quantity;

/** Height or girth of a body [cm]; finite and positive. Some equations want metres or inches. */
public record Length(double cm) {
    /** International inch, exact by definition. */
    public static final double CM_PER_INCH = 2.54;

    private static final double CM_PER_METRE = 100;
    private static final int INCHES_PER_FOOT = 12;

    public Length {
        if (!Double.isFinite(cm) || cm <= 0) {
            throw new IllegalArgumentException("cm (" + cm + ") must be finite and > 0.");
        }
    }

    public static Length ofFeetAndInches(double feet, double inches) {
        return ofInches(feet * INCHES_PER_FOOT + inches);
    }

    public static Length ofInches(double inches) {
        return new Length(inches * CM_PER_INCH);
    }

    public double metres() {
        return cm / CM_PER_METRE;
    }

    public double inches() {
        return cm / CM_PER_INCH;
    }
}

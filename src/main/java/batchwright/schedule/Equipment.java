package batchwright.schedule;

/**
 * What a session may use besides the one cook.
 *
 * @param burners at least 1
 * @param shelves of the one oven, at least 1
 * @param heatingMinutes until the oven is at another temperature, from cold too
 * @param toleranceCelsius dishes whose temperatures differ by no more share the oven
 */
public record Equipment(int burners, int shelves, int heatingMinutes, int toleranceCelsius) {
    /** A usual home kitchen; ten minutes of heating and ten degrees are common practice, not measured. */
    public static final Equipment USUAL = new Equipment(4, 2, 10, 10);

    public Equipment {
        if (burners < 1 || shelves < 1 || heatingMinutes < 0 || toleranceCelsius < 0) {
            throw new IllegalArgumentException("burners (" + burners + ") and shelves (" + shelves
                    + ") must be at least 1, heatingMinutes (" + heatingMinutes + ") and toleranceCelsius ("
                    + toleranceCelsius + ") at least 0.");
        }
    }
}

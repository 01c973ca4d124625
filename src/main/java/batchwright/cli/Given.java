package batchwright.cli;

import batchwright.app.DishNumber;
import batchwright.app.Refused;
import batchwright.app.TypedSum;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;

/**
 * A number, a day or a time as typed on the command line. Decimals have a point; nothing else is understood.
 *
 * @param name of the option or argument
 * @param text what was typed
 */
public record Given(String name, String text) {
    private static final String DAY = "\\d{4}-\\d{2}-\\d{2}";
    private static final String TIME = "([01]\\d|2[0-3]):[0-5]\\d";
    private static final String DISHES = "(\\d{1,2}-)?\\d{1,2}";
    private static final String WHOLE = "\\d{1,9}";
    private static final String ONE_DECIMAL = "\\d{1,9}(\\.\\d)?";
    /** The most that any currency has. */
    private static final String FOUR_DECIMALS = "\\d{1,10}(\\.\\d{1,4})?";

    private static final BigDecimal MOST_MONEY = BigDecimal.valueOf(1_000_000_000);

    /** @throws Refused when it is no whole number in the range */
    public int whole(int least, int most, String unit) {
        String range = "a whole number of " + unit + " from " + least + " to " + most;
        if (!text.matches(WHOLE)) {
            throw refused(range);
        }
        int value = Integer.parseInt(text);
        if (value < least || value > most) {
            throw refused(range);
        }
        return value;
    }

    /**
     * Such as 3, or 2-3.
     *
     * @throws Refused when it is no number of dishes, nor two of them
     */
    public DishNumber dishes(int most) {
        String range = "a whole number of dishes from 1 to " + most + ", or the least and the most, such as 2-3";
        if (!text.matches(DISHES)) {
            throw refused(range);
        }
        int dash = text.indexOf('-');
        var number = new DishNumber(
                dash < 0 ? 1 : Integer.parseInt(text.substring(0, dash)), Integer.parseInt(text.substring(dash + 1)));
        if (number.least() < 1 || number.most() < number.least() || number.most() > most) {
            throw refused(range);
        }
        return number;
    }

    /** @throws Refused when it is no number with at most one decimal in the range */
    BigDecimal oneDecimal(int most, String unit) {
        String range = "a number of " + unit + " from 0 to " + most + " with at most one decimal";
        if (!text.matches(ONE_DECIMAL)) {
            throw refused(range);
        }
        var value = new BigDecimal(text);
        if (value.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw refused(range);
        }
        return value;
    }

    /** @throws Refused when it is no amount such as 75 or 75.50 */
    public TypedSum money() {
        String range = "an amount such as 75 or 75.50, without a currency";
        if (!text.matches(FOUR_DECIMALS) || new BigDecimal(text).compareTo(MOST_MONEY) > 0) {
            throw refused(range);
        }
        return new TypedSum(new BigDecimal(text));
    }

    /** @throws Refused when it is no day such as 2026-11-25 */
    public LocalDate day() {
        if (text.matches(DAY)) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException notInTheCalendar) {
                throw refused("a day of the calendar");
            }
        }
        throw refused("a day as year-month-day, such as 2026-11-25");
    }

    /** @throws Refused when it is no time such as 14:30 */
    LocalTime time() {
        if (!text.matches(TIME)) {
            throw refused("a time from 00:00 to 23:59, such as 14:30");
        }
        return LocalTime.parse(text);
    }

    private Refused refused(String range) {
        String point = text.matches("\\d+,\\d+") ? "; write decimals with a point" : "";
        return Refused.because(name + " cannot be \"" + text + "\"", "Enter " + range + point + ".");
    }
}

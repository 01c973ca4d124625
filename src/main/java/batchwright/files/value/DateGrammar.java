package batchwright.files.value;

import batchwright.text.Written;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days such as 2026-10-15. */
public final class DateGrammar {
    private static final Pattern YEAR_FIRST = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    /** With points the day comes first wherever dates are written so; with strokes it may be the month. */
    private static final Pattern DAY_FIRST =
            Pattern.compile("(0?[1-9]|[12][0-9]|3[01])\\.(0?[1-9]|1[0-2])\\.(20[0-9]{2})");

    private final Problems problems;

    public DateGrammar(Problems problems) {
        this.problems = problems;
    }

    public Optional<LocalDate> read(Written written) {
        try {
            return Optional.of(LocalDate.parse(written.text()));
        } catch (DateTimeParseException notADate) {
            problems.error(written, written.quoted() + " is not a date", expected(written.text()));
            return Optional.empty();
        }
    }

    private static String expected(String text) {
        Matcher pointed = DAY_FIRST.matcher(text);
        String yearFirst = pointed.matches()
                ? pointed.group(3) + "-" + twoDigits(pointed.group(2)) + "-" + twoDigits(pointed.group(1))
                : text;
        if (isDay(yearFirst)) {
            return "expected year-month-day: " + yearFirst;
        }
        return YEAR_FIRST.matcher(yearFirst).matches()
                ? "expected a day of the calendar"
                : "expected year-month-day: 2026-10-15";
    }

    private static boolean isDay(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException notADay) {
            return false;
        }
    }

    private static String twoDigits(String number) {
        return number.length() < 2 ? "0" + number : number;
    }
}

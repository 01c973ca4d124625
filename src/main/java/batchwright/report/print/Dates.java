package batchwright.report.print;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days of the calendar in words, the same in every locale. */
public final class Dates {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);

    private Dates() {}

    /** Wed 25 Nov. */
    public static String shortly(LocalDate day) {
        return SHORT.format(day);
    }

    /** The same, with its year where that is not the year of today: Thu 28 Jan 2027. */
    public static String shortly(LocalDate day, LocalDate today) {
        return SHORT.format(day) + (day.getYear() == today.getYear() ? "" : " " + day.getYear());
    }

    /** Wednesday 25 November 2026. */
    public static String inFull(LocalDate day) {
        return LONG.format(day);
    }
}

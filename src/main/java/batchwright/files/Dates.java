package batchwright.files;

import batchwright.text.Written;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Days such as 2026-10-15. */
final class Dates {
    private final Problems problems;

    Dates(Problems problems) {
        this.problems = problems;
    }

    Optional<LocalDate> read(Written written) {
        try {
            return Optional.of(LocalDate.parse(written.text()));
        } catch (DateTimeParseException notADate) {
            problems.error(written, written.quoted() + " is not a date", "expected year-month-day: 2026-10-15");
            return Optional.empty();
        }
    }
}

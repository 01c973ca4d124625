package batchwright.files.shop;

import batchwright.files.table.TableRow;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.util.regex.Pattern;

/**
 * Warns of what is in the note of something at home and seems to belong elsewhere: a use-by date, which would be lost and the
 * food eaten after it; or the second half of a number with a decimal comma.
 */
final class PantryNote {
    private static final String DATE = "\\d{4}-\\d{1,2}-\\d{1,2}|\\d{1,2}[./]\\d{1,2}[./](\\d{4}|\\d{2})";
    private static final Pattern ONLY_A_DATE = Pattern.compile(DATE);
    /** A note such as "opened 2026-11-20" is no use-by date. */
    private static final Pattern USE_BY = Pattern.compile(
            "(?i).*\\b(use[ -]?by|best before|best by|eat by|good until|keeps until|expires?|expiry)\\b.*\\d.*");

    private static final Pattern WHOLE = Pattern.compile("\\d{1,5}");
    private static final Pattern DECIMALS = Pattern.compile("\\d{1,3}( ?k?g)?");

    private PantryNote() {}

    static void check(TableRow row, Problems problems) {
        Written note = row.cell("note");
        String text = note.text();
        boolean date =
                ONLY_A_DATE.matcher(text).matches() || USE_BY.matcher(text).matches();
        if (date && row.cell("use_by").isEmpty()) {
            problems.warning(
                    note.at(),
                    "this date is in the note, where it is not read",
                    row.hasColumn("use_by")
                            ? "a use-by date belongs in the column use_by: leave the note empty, with a comma for it"
                            : "for a use-by date add the column use_by to the header, and a comma before the date");
        } else if (DECIMALS.matcher(text).matches()
                && WHOLE.matcher(row.cell("grams").text()).matches()) {
            problems.warning(
                    note.at(),
                    "%s is read as %s g with the note %s"
                            .formatted(
                                    row.cell("grams").text() + "," + text,
                                    row.cell("grams").text(),
                                    note.quoted()),
                    "expected decimals with a point: a comma separates cells");
        }
    }
}

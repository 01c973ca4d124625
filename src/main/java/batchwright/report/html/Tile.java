package batchwright.report.html;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.Show;
import java.util.Optional;

/** A figure that stands out at the top of the report, inside a list of them. */
final class Tile {
    private Tile() {}

    /** @param note below the figure; may be empty */
    static void write(Html html, String what, String figure, String note) {
        html.open("div").element("dt", what);
        html.open("dd").element("strong", figure);
        if (!note.isEmpty()) {
            html.element("span", note);
        }
        html.close().close().line();
    }

    /** How a cost stands to the budget. */
    static String budget(Optional<Money> budget, Money cost, Currency currency) {
        return Show.underBudget(budget, cost, currency).orElse("no budget was set");
    }
}

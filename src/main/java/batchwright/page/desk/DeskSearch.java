package batchwright.page.desk;

import batchwright.answer.EatenFirst;
import batchwright.answer.PlanAnswer;
import batchwright.app.desk.Behind;
import batchwright.page.desk.DeskBoard.Outcome;
import batchwright.quantity.Currency;
import batchwright.report.print.Show;

/** Tells a desk what the whole search for one of its wishes knows, a few times a second. */
final class DeskSearch implements Behind.Listener {
    private static final long BETWEEN_NANOS = 250_000_000L;

    private final DeskBoard board;
    private final int number;
    private final EatenFirst first;
    private final Currency currency;
    private long told = System.nanoTime() - BETWEEN_NANOS;

    /** @param number of the wish */
    DeskSearch(DeskBoard board, int number, EatenFirst first, Currency currency) {
        this.board = board;
        this.number = number;
        this.first = first;
        this.currency = currency;
    }

    @Override
    public void progress(Behind.Progress progress) {
        long nanos = System.nanoTime();
        if (nanos - told >= BETWEEN_NANOS) {
            told = nanos;
            board.working(number, says(progress));
        }
    }

    private String says(Behind.Progress progress) {
        return "Searching. "
                + progress.cost()
                        .map(cost -> "Best so far: " + Show.money(cost, currency) + ".")
                        .orElse("No plan found so far.")
                + " None costs less than " + Show.money(progress.bound(), currency) + ".";
    }

    @Override
    public void answered(PlanAnswer answer, boolean isLast) {
        board.show(number, Outcome.of(first, answer), isLast);
    }

    @Override
    public void failed(Throwable fault) {
        board.failed(number, fault);
    }
}

package batchwright.page.desk;

import batchwright.plan.Watch;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.Show;
import java.util.Optional;
import java.util.function.Consumer;

/** Tells how far a search is, a few times a second, and ends it when something else was asked. */
final class SearchWatch implements Watch {
    private static final long BETWEEN_NANOS = 250_000_000L;

    private final Consumer<String> teller;
    private Optional<Currency> currency = Optional.empty();
    private Optional<Money> best = Optional.empty();
    private Optional<Money> bound = Optional.empty();
    private long told;
    private volatile boolean stopped;

    SearchWatch(Consumer<String> teller) {
        this.teller = teller;
    }

    void end() {
        stopped = true;
    }

    @Override
    public void paidIn(Currency other) {
        currency = Optional.of(other);
    }

    @Override
    public void found(Money cost) {
        best = Optional.of(cost);
        tell(true);
    }

    @Override
    public void bound(Money proven) {
        bound = Optional.of(proven);
        tell(false);
    }

    @Override
    public boolean stop() {
        return stopped;
    }

    private void tell(boolean now) {
        long nanos = System.nanoTime();
        if (currency.isPresent() && (now || nanos - told > BETWEEN_NANOS)) {
            told = nanos;
            teller.accept("Searching. "
                    + best.map(cost -> "Best so far: " + Show.money(cost, currency.get()) + ".")
                            .orElse("No plan found so far.")
                    + bound.map(least -> " None costs less than " + Show.money(least, currency.get()) + ".")
                            .orElse(""));
        }
    }
}

package batchwright.app;

import batchwright.plan.Watch;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.Optional;

/** Ends a search once no plan can be cheaper than the best found by more than so many per cent. */
final class UntilClose implements Watch {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    private final Watch watch;
    private final Optional<BigDecimal> percent;
    private Optional<Money> best = Optional.empty();
    private Optional<Money> bound = Optional.empty();

    /**
     * @param watch told all, and may end the search too
     * @param percent of the least that a plan may cost; none to search to the end
     */
    UntilClose(Watch watch, Optional<BigDecimal> percent) {
        this.watch = watch;
        this.percent = percent;
    }

    @Override
    public void paidIn(Currency currency) {
        watch.paidIn(currency);
    }

    @Override
    public void found(Money cost) {
        best = Optional.of(cost);
        watch.found(cost);
    }

    @Override
    public void bound(Money proven) {
        bound = Optional.of(proven);
        watch.bound(proven);
    }

    @Override
    public void wrong(String what) {
        watch.wrong(what);
    }

    @Override
    public boolean stop() {
        return watch.stop() || isClose();
    }

    @Override
    public boolean stop(long work) {
        return watch.stop(work) || isClose();
    }

    private boolean isClose() {
        return best.flatMap(cost -> bound.filter(least -> isClose(cost, least))).isPresent();
    }

    /** Whether this cost is as close to this bound as was asked for. */
    boolean isClose(Money cost, Money least) {
        return percent.filter(most -> BigDecimal.valueOf(cost.minor() - least.minor())
                                .multiply(PER_CENT)
                                .compareTo(most.multiply(BigDecimal.valueOf(least.minor())))
                        <= 0)
                .isPresent();
    }
}

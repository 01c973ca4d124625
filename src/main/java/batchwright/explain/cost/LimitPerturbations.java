package batchwright.explain.cost;

import batchwright.explain.EaterInRequest;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Setting;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Every limit of an eater, changed by 5 % of its figure, or by a percentage point of the aim where a profile says it in per cent
 * of that.
 */
final class LimitPerturbations {
    private static final int ONE_IN = 20; // 5 %
    private static final int PER_CENT = 100;

    private final EaterInRequest at;
    private final Limit limit;

    private LimitPerturbations(EaterInRequest at, Limit limit) {
        this.at = at;
        this.limit = limit;
    }

    /** None for a limit that allows anything. */
    static List<RulePerturbation> of(EaterInRequest at) {
        return at.target().limits().stream()
                .filter(limit -> !limit.range().isAny())
                .map(limit -> new LimitPerturbations(at, limit).perturbation())
                .toList();
    }

    private RulePerturbation perturbation() {
        return new RulePerturbation(
                limit.name() + ", " + limit.unit(),
                Optional.of(at.name()),
                figure(limit.range()),
                Optional.of(moved(-1))
                        .filter(range -> limit.widest().holds(range))
                        .map(this::change),
                Optional.of(moved(1)).filter(LimitPerturbations::isPossible).map(this::change));
    }

    /** @param in 1 inwards, -1 outwards */
    private Range moved(int in) {
        Range now = limit.range();
        int least = now.hasLeast() ? now.least() + in * step(now.least()) : 0;
        OptionalInt most = now.most().isPresent()
                ? OptionalInt.of(now.most().getAsInt() - in * step(now.most().getAsInt()))
                : now.most();
        return new Range(Math.max(0, least), most);
    }

    /** In whole units, at least one. */
    private int step(int figure) {
        return limit.setting()
                .filter(Setting.PercentOfAim.class::isInstance)
                .map(setting -> Math.max(1, at.target().energyAimKcal() / PER_CENT))
                .orElseGet(() -> Math.min(figure, Math.max(1, (figure + ONE_IN / 2) / ONE_IN)));
    }

    private static boolean isPossible(Range range) {
        return range.least() <= range.mostOrInfinity();
    }

    private Change change(Range range) {
        return new Change(figure(range), request -> at.with(request, limit, range));
    }

    private static String figure(Range range) {
        if (range.most().isEmpty()) {
            return Integer.toString(range.least());
        }
        return (range.hasLeast() ? range.least() + "-" : "<=") + range.most().getAsInt();
    }
}

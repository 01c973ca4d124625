package batchwright.explain;

import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Setting;
import batchwright.plan.Remedy;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A soft rule for each limit: loosened by whole units, at the end it has, or at both as evenly as a profile says it. One that no profile changes cannot be loosened. */
final class SoftLimits {
    /** More of any unit than a day holds, yet small enough to reckon with. */
    private static final int NO_LIMIT = 50_000;

    private final EaterInRequest at;
    private final Limit limit;

    private SoftLimits(EaterInRequest at, Limit limit) {
        this.at = at;
        this.limit = limit;
    }

    /** What a profile changes comes last, and of that what people see first. What allows anything has no soft rule. */
    static List<SoftRule> of(EaterInRequest at) {
        List<Limit> limits = new ArrayList<>(at.target().limits());
        Collections.reverse(limits);
        return limits.stream()
                .filter(limit -> !limit.range().isAny())
                .sorted(Comparator.comparing(limit -> limit.setting().isPresent()))
                .map(limit -> new SoftLimits(at, limit).softRule())
                .toList();
    }

    private SoftRule softRule() {
        return new SoftRule(
                limit.name(),
                limit.scope().holds(at.name()) + " " + limit.says(),
                request -> at.with(request, limit, Range.ANY),
                loosenings(),
                limit.setting().isPresent() ? Optional.empty() : Optional.of(new Remedy.ChangeWhatIsCooked()));
    }

    private List<List<Loosening>> loosenings() {
        return limit.setting().map(this::loosenings).orElse(List.of());
    }

    private List<List<Loosening>> loosenings(Setting setting) {
        Range range = limit.range();
        int below = range.least() - limit.widest().least();
        int above = most(limit.widest()) - most(range);
        if (range.most().isEmpty()) {
            return List.of(List.of(looser(setting, "lower it to ", below, 1, 0)));
        } else if (!range.hasLeast()) {
            return List.of(List.of(looser(setting, "raise it to ", above, 0, 1)));
        } else if (setting.movesBothEnds()) {
            return List.of(List.of(looser(setting, "widen it to ", Math.min(below, above), 1, 1)));
        }
        return List.of(
                List.of(looser(setting, "widen it to ", below, 1, 0), looser(setting, "widen it to ", above, 0, 1)),
                List.of(looser(setting, "widen it to ", above, 1, 1)));
    }

    private static int most(Range range) {
        return range.most().orElse(NO_LIMIT);
    }

    private Loosening looser(Setting setting, String verb, int reach, int below, int above) {
        return new Loosening(
                Math.max(0, reach),
                (request, units) -> at.with(request, limit, looser(units, below, above)),
                units -> verb + figure(looser(units, below, above)),
                units -> new Remedy.ChangeTarget(at.eater(), setting, looser(units, below, above)));
    }

    private Range looser(int units, int below, int above) {
        return limit.range().wider(units * below, units * above);
    }

    /** In the words of "lower it to", where least and most say themselves. */
    private String figure(Range range) {
        String both = range.least() + " to " + range.most().orElse(0);
        String one =
                Integer.toString(range.hasLeast() ? range.least() : range.most().orElse(0));
        return (limit.range().hasLeast() && range.most().isPresent() ? both : one) + " " + limit.unit();
    }
}

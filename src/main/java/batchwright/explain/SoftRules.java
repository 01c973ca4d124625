package batchwright.explain;

import batchwright.plan.PlanRequest;
import java.util.ArrayList;
import java.util.List;

/**
 * Every rule of a request that can be loosened. Those that people think of first come last, because a deletion filter tends to
 * keeps what it looks at last. Part ranges, stock, use-by dates, containers a day and what is always eaten are no soft rules: they
 * always hold.
 *
 * @param groups of the session, then of each eater
 */
record SoftRules(List<List<SoftRule>> groups) {
    static SoftRules of(PlanRequest request) {
        List<List<SoftRule>> groups = new ArrayList<>();
        List<SoftRule> session = new ArrayList<>();
        SoftCooking.keeping(request).ifPresent(session::add);
        SoftCooking.dishCount(request).ifPresent(session::add);
        SoftCooking.leastDishes(request).ifPresent(session::add);
        SoftCooking.lastTime(request).ifPresent(session::add);
        SoftCooking.askedFor(request).ifPresent(session::add);
        SoftCooking.handsOnMinutes(request).ifPresent(session::add);
        SoftCooking.doneWithin(request).ifPresent(session::add);
        SoftShops.shops(request).ifPresent(session::add);
        groups.add(session);
        EaterInRequest.all(request).forEach(at -> groups.add(of(at, request)));
        return new SoftRules(groups);
    }

    private static List<SoftRule> of(EaterInRequest at, PlanRequest request) {
        List<SoftRule> softRules = new ArrayList<>();
        softRules.addAll(SoftAvoid.of(at, request.kitchen()));
        softRules.addAll(SoftMeals.of(at, request.kitchen()));
        SoftMeals.snackPairs(at, request.kitchen()).ifPresent(softRules::add);
        softRules.add(SoftWishes.snackLimits(at));
        softRules.addAll(SoftLimits.of(at));
        return softRules;
    }

    List<SoftRule> all() {
        return groups.stream().flatMap(List::stream).toList();
    }

    /** The request with these rules only. */
    PlanRequest holding(PlanRequest request, List<SoftRule> kept) {
        PlanRequest looser = request;
        for (SoftRule softRule : all()) {
            if (!kept.contains(softRule)) {
                looser = softRule.dropped().apply(looser);
            }
        }
        return looser;
    }
}

package batchwright.explain;

import batchwright.plan.PlanRequest;
import java.util.ArrayList;
import java.util.List;

/**
 * Every rule of a request that can be loosened. Those that people think of first come last, because a deletion filter rather
 * keeps what it looks at last. Part ranges, stock, use-by dates, containers a day and what is always eaten are no dials: they
 * always hold.
 *
 * @param groups of the session, then of each eater
 */
record Dials(List<List<Dial>> groups) {
    static Dials of(PlanRequest request) {
        List<List<Dial>> groups = new ArrayList<>();
        List<Dial> session = new ArrayList<>();
        SessionDials.keeping(request).ifPresent(session::add);
        SessionDials.dishCount(request).ifPresent(session::add);
        groups.add(session);
        AtTable.all(request).forEach(at -> groups.add(of(at, request)));
        return new Dials(groups);
    }

    private static List<Dial> of(AtTable at, PlanRequest request) {
        List<Dial> dials = new ArrayList<>();
        WishDials.avoid(at, request.kitchen()).ifPresent(dials::add);
        dials.add(WishDials.snackLimits(at));
        dials.addAll(LimitDials.of(at));
        return dials;
    }

    List<Dial> all() {
        return groups.stream().flatMap(List::stream).toList();
    }

    /** The request with these rules only. */
    PlanRequest holding(PlanRequest request, List<Dial> kept) {
        PlanRequest looser = request;
        for (Dial dial : all()) {
            if (!kept.contains(dial)) {
                looser = dial.dropped().apply(looser);
            }
        }
        return looser;
    }
}

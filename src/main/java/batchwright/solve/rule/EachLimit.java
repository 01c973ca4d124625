package batchwright.solve.rule;

import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Seat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;

/** The limits of those at the table, limit by limit and not eater by eater. */
final class EachLimit {
    private EachLimit() {}

    static void of(List<Seat> seats, Scope scope, BiConsumer<Seat, Limit> look) {
        Set<String> ids = new LinkedHashSet<>();
        seats.forEach(seat -> seat.target().limits(scope).forEach(limit -> ids.add(limit.id())));
        for (String id : ids) {
            for (Seat seat : seats) {
                seat.target().limits(scope).stream()
                        .filter(limit -> limit.id().equals(id))
                        .forEach(limit -> look.accept(seat, limit));
            }
        }
    }
}

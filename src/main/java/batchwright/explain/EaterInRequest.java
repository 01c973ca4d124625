package batchwright.explain;

import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.person.Eater;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One eater's place in a request, and the request with that place changed.
 *
 * @param place counted from 0
 */
public record EaterInRequest(int place, Seat seat) {
    public static List<EaterInRequest> all(PlanRequest request) {
        List<EaterInRequest> all = new ArrayList<>();
        for (Seat seat : request.seats()) {
            all.add(new EaterInRequest(all.size(), seat));
        }
        return all;
    }

    public Eater eater() {
        return seat.eater();
    }

    public String name() {
        return eater().name();
    }

    public DayTarget target() {
        return seat.target();
    }

    public Wishes wishes() {
        return eater().wishes();
    }

    /** Where this eater's wishes and figures stand. */
    String file() {
        return "profiles/" + eater().id() + ".yaml";
    }

    /** With another range of one of this eater's limits. */
    public PlanRequest with(PlanRequest request, Limit limit, Range range) {
        return withTarget(request, target -> target.with(limit, range));
    }

    public PlanRequest withTarget(PlanRequest request, UnaryOperator<DayTarget> change) {
        return with(request, s -> new Seat(s.eater(), change.apply(s.target())));
    }

    public PlanRequest withWishes(PlanRequest request, UnaryOperator<Wishes> change) {
        return with(
                request,
                s -> new Seat(s.eater().withWishes(change.apply(s.eater().wishes())), s.target()));
    }

    private PlanRequest with(PlanRequest request, UnaryOperator<Seat> change) {
        List<Seat> seats = new ArrayList<>(request.seats());
        seats.set(place, change.apply(seats.get(place)));
        return request.withSeats(seats);
    }
}

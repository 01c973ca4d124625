package batchwright.plan;

import batchwright.food.Nutrients;
import batchwright.person.Eater;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What to cook, eat and buy, in one cooking session after another.
 *
 * @param sessions at least one
 * @param proof how sure it is that no other plan is cheaper
 */
public record Plan(List<Session> sessions, Proof proof) {
    public Plan {
        sessions = List.copyOf(sessions);
        if (sessions.isEmpty()) {
            throw new IllegalArgumentException("sessions must not be empty.");
        }
    }

    /** Everything is cooked in one session. */
    public static Plan of(Session only) {
        return new Plan(List.of(only), only.proof());
    }

    /** With what is left from before apart from what is cooked and bought, to be shown. */
    public Plan apart() {
        return new Plan(sessions.stream().map(Session::apart).toList(), proof);
    }

    public boolean isCookedOnce() {
        return sessions.size() == 1;
    }

    /** The session on day 1. */
    public Session first() {
        return sessions.get(0);
    }

    public Money cost() {
        return sessions.stream().map(Session::cost).reduce(Money.ZERO, Money::plus);
    }

    /** What the trips to the shops cost, of {@link #cost}. */
    public Money trips() {
        return sessions.stream().map(Session::trips).reduce(Money.ZERO, Money::plus);
    }

    /** All that is cooked, in order. */
    public List<Batch> batches() {
        return each(session -> session.batches().stream());
    }

    /** All that is bought or taken from the pantry: a line for each food of each session. */
    public List<Purchase> shopping() {
        return each(session -> session.shopping().stream());
    }

    /** The days of each eater in each session, counted from its cooking day. */
    public List<EaterDays> eaters() {
        return each(session -> session.eaters().stream());
    }

    private <T> List<T> each(Function<Session, Stream<T>> what) {
        return sessions.stream().flatMap(what).toList();
    }

    /** What an eater's day holds on the average of all days; empty when they are not at the table. */
    public Optional<Nutrients> averageDay(Eater eater) {
        Nutrients sum = Nutrients.NONE;
        int days = 0;
        for (Session session : sessions) {
            for (EaterDays mine : session.eaters()) {
                if (mine.seat().eater().equals(eater)) {
                    for (Day day : mine.days()) {
                        sum = sum.plus(session.totals(eater, day));
                        days++;
                    }
                }
            }
        }
        return days == 0 ? Optional.empty() : Optional.of(sum.dividedBy(days));
    }
}

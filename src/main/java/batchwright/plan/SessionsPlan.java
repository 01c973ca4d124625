package batchwright.plan;

import batchwright.quantity.Money;
import java.util.List;

/**
 * Several cooking sessions, one after another.
 *
 * @param proof how sure it is that no other sessions would be cheaper
 */
public record SessionsPlan(List<Session> sessions, Proof proof) {
    public SessionsPlan {
        sessions = List.copyOf(sessions);
    }

    public Money cost() {
        return sessions.stream().map(s -> s.plan().cost()).reduce(Money.ZERO, Money::plus);
    }
}

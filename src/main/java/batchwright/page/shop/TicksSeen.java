package batchwright.page.shop;

import batchwright.page.guard.Visitor;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A phone that lost the connection does not know what arrived, and sends it again: each tick has a number, and counts once. */
final class TicksSeen {
    private static final String NUMBER = "[0-9]{1,15}";

    private final Map<Visitor, Long> last = new ConcurrentHashMap<>();

    /** @param number as sent; what has none is new */
    boolean isNew(Visitor visitor, String number) {
        return !number.matches(NUMBER) || last.getOrDefault(visitor, -1L) < Long.parseLong(number);
    }

    /** It is written down. */
    void took(Visitor visitor, String number) {
        if (number.matches(NUMBER)) {
            last.merge(visitor, Long.parseLong(number), Math::max);
        }
    }
}

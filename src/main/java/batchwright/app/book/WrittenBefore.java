package batchwright.app.book;

import batchwright.book.Book;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.book.KeptPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether the book has already what a cooking session of a kept plan foresaw: a second time would count it twice. */
final class WrittenBefore {
    /** So many days before the cooking day its list may be bought. Our choice. */
    static final int DAYS_AHEAD = 3;

    private WrittenBefore() {}

    /**
     * The first line of the session that tells of the same.
     *
     * @param day of the session
     * @param events what would be written
     */
    static Optional<Entry> of(KeptPlan plan, LocalDate day, List<Event> events, Book book) {
        int session = plan.sessionOf(plan.dayOf(day));
        Set<String> planned = events.stream()
                .map(WrittenBefore::what)
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
        return book.entries().stream()
                .filter(entry -> isOf(plan, session, entry))
                .filter(entry -> what(entry.event()).filter(planned::contains).isPresent())
                .findFirst();
    }

    /** What stood in the book when the plan was kept happened before it: what was bought then was stock already. */
    private static boolean isOf(KeptPlan plan, int session, Entry entry) {
        if (entry.line() <= plan.kept().bookLine()) {
            return false;
        }
        LocalDate cooks = plan.date(session);
        boolean before = entry.event() instanceof Event.Bought
                && entry.day().isBefore(cooks)
                && !entry.day().isBefore(cooks.minusDays(DAYS_AHEAD));
        return before || (plan.covers(entry.day()) && plan.sessionOf(plan.dayOf(entry.day())) == session);
    }

    private static Optional<String> what(Event event) {
        if (event instanceof Event.Bought bought) {
            return Optional.of("bought %s x %s".formatted(bought.count(), bought.food()));
        } else if (event instanceof Event.Cooked cooked) {
            return Optional.of("cooked " + cooked.dish());
        } else if (event instanceof Event.Filled filled) {
            return Optional.of("filled %s for %s"
                    .formatted(filled.boxes().dish(), filled.boxes().eater()));
        }
        return Optional.empty();
    }
}

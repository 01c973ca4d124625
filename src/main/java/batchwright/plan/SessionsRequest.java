package batchwright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a plan with several cooking sessions is asked for. Each session cooks for the days up to the next one.
 *
 * @param whole all days; the most dishes are those of one session
 * @param cooks how many sessions, from 1 to the number of days
 * @param vary whether no dish is cooked in two sessions in a row
 */
public record SessionsRequest(PlanRequest whole, int cooks, boolean vary) {
    public static final int MOST_COOKS = 8;

    public SessionsRequest {
        if (cooks < 1 || cooks > Math.min(MOST_COOKS, whole.days())) {
            throw new IllegalArgumentException(
                    "cooks (" + cooks + ") must be from 1 to " + MOST_COOKS + ", and no more than the days.");
        }
    }

    /** The day on which a session cooks, evenly spread, the longer stretches first. Session 1 cooks on day 1. */
    public int firstDay(int session) {
        int before = whole.days() * (session - 1);
        return (before + cooks - 1) / cooks + 1;
    }

    /** For how many days a session cooks. */
    public int days(int session) {
        return (session == cooks ? whole.days() + 1 : firstDay(session + 1)) - firstDay(session);
    }

    public LocalDate cookingDay(int session) {
        return whole.kitchen().cookingDay().plusDays(firstDay(session) - 1L);
    }

    /** Numbers of all sessions, from 1. */
    public List<Integer> sessions() {
        return IntStream.rangeClosed(1, cooks).boxed().toList();
    }

    /** Whether every session cooks for the same number of days. */
    public boolean evenly() {
        return whole.days() % cooks == 0;
    }
}

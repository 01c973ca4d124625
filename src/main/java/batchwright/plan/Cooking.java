package batchwright.plan;

import batchwright.food.Dish;
import batchwright.plan.left.LeftContainers;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * How often there is cooking. Sessions are spread evenly over the days of a plan, the longer stretches first; each cooks for the days
 * up to the next one.
 *
 * @param sessions how many, 1 to {@link #MOST_SESSIONS}
 * @param vary whether no dish is cooked in two sessions in a row
 * @param mustCook dishes that are cooked in each session, whatever it costs
 * @param variety how different the dishes of each session are
 * @param left containers from before that are eaten in it
 */
public record Cooking(int sessions, boolean vary, Set<Dish> mustCook, Variety variety, LeftContainers left) {
    public static final int MOST_SESSIONS = 8;
    /** All of it on the first day. */
    public static final Cooking ONCE = new Cooking(1, false);

    public Cooking {
        mustCook = Collections.unmodifiableSet(new LinkedHashSet<>(mustCook));
        if (sessions < 1 || sessions > MOST_SESSIONS) {
            throw new IllegalArgumentException("sessions (" + sessions + ") must be from 1 to " + MOST_SESSIONS + ".");
        }
    }

    /** No dish is asked for. */
    public Cooking(int sessions, boolean vary) {
        this(sessions, vary, Set.of(), Variety.ANY, LeftContainers.NONE);
    }

    public Cooking withMustCook(Set<Dish> other) {
        return new Cooking(sessions, vary, other, variety, left);
    }

    public Cooking withVariety(Variety other) {
        return new Cooking(sessions, vary, mustCook, other, left);
    }

    public Cooking withLeft(LeftContainers other) {
        return new Cooking(sessions, vary, mustCook, variety, other);
    }

    /** The same, all of it on the first day. */
    public Cooking once() {
        return new Cooking(1, false, mustCook, variety, left);
    }

    /** The day on which a session cooks, of so many. Session 1 cooks on day 1. */
    public int firstDay(int session, int days) {
        int before = days * (session - 1);
        return (before + sessions - 1) / sessions + 1;
    }

    /** For how many of so many days a session cooks. */
    public int days(int session, int days) {
        return (session == sessions ? days + 1 : firstDay(session + 1, days)) - firstDay(session, days);
    }
}

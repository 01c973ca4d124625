package batchwright.book;

import batchwright.book.Event.Place;
import java.time.LocalDate;

/** How long containers keep that went into the freezer, or came out of it. */
public final class BoxKeeping {
    /** Frozen dishes keep their quality for 2-3 months (FoodKeeper data); the shorter is taken. */
    private static final int FREEZER_DAYS = 60;
    /** A container thaws overnight and is eaten within a day of it (advice of the UK Food Standards Agency, from memory). */
    private static final int THAWED_DAYS = 1;
    /** A large one takes two nights. */
    public static final int MOST_THAWED_DAYS = 2;

    private BoxKeeping() {}

    /** The last day of what went into the freezer on a day. */
    public static LocalDate frozen(LocalDate day) {
        return day.plusDays(FREEZER_DAYS);
    }

    /** The last day of a container that changed its place on a day. */
    public static LocalDate moved(LocalDate day, Place to) {
        return to == Place.FREEZER ? frozen(day) : day.plusDays(THAWED_DAYS);
    }
}

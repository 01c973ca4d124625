package batchwright.person;

import java.util.Optional;
import java.util.stream.Stream;

/** Diaries for tests. */
public final class Diaries {
    private Diaries() {}

    /** @param hours such as: sleeping 8, sitting 16 */
    public static Diary of(String hours) {
        return new Diary(Stream.of(hours.split(", *", -1))
                .map(part -> part.split(" ", -1))
                .map(part -> entry(listed(part[0]), Double.parseDouble(part[1])))
                .toList());
    }

    static ListedActivity listed(String id) {
        return Optional.ofNullable(Compendium2011.activities().get(id))
                .orElseThrow(() -> new AssertionError("no activity is called " + id));
    }

    static Diary.Entry entry(ListedActivity activity, double hours) {
        return new Diary.Entry(activity, (int) Math.round(hours * 60));
    }
}

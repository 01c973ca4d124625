package batchwright.solve.snack;

import java.util.ArrayList;
import java.util.List;

/** The best snacks so far, best first; of equal ones the first to come stays in front. */
final class Best {
    private record Entry(long rank, Choice choice) {}

    private final Ranking ranking;
    private final int wanted;
    private final List<Entry> entries = new ArrayList<>();

    Best(Ranking ranking, int wanted) {
        this.ranking = ranking;
        this.wanted = wanted;
    }

    /** A snack that comes now and has this rank or a higher one is not among the best. */
    long limit() {
        if (entries.size() < wanted) {
            return Ranking.WORST;
        }
        long last = entries.get(wanted - 1).rank();
        return ranking.complete() ? last : last + 1;
    }

    void offer(long rank, Choice choice) {
        Entry entry = new Entry(rank, choice);
        int place = entries.size();
        while (place > 0 && isBefore(entry, entries.get(place - 1))) {
            place--;
        }
        entries.add(place, entry);
        if (entries.size() > wanted) {
            entries.remove(wanted);
        }
    }

    private boolean isBefore(Entry one, Entry other) {
        return one.rank() == other.rank()
                ? ranking.compareLeftOut(one.choice(), other.choice()) < 0
                : one.rank() < other.rank();
    }

    List<Choice> choices() {
        return entries.stream().map(Entry::choice).toList();
    }
}

package batchwright.schedule.search;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Moves what would stand to as late as possible, without ending later: what is waited for, and all that follows it (right
 * justification: Valls, Ballestin, Quintanilla, European Journal of Operational Research 165, 2005, 375-386, from memory).
 */
final class Later {
    private final Project project;
    private final Conflicts conflicts;
    private final BitSet movable = new BitSet();

    Later(Project project, Conflicts conflicts, Within within) {
        this.project = project;
        this.conflicts = conflicts;
        for (int i = 0; i < project.size(); i++) {
            if (within.isWaitedFor(i)
                    || project.activities().get(i).after().stream().anyMatch(movable::get)) {
                movable.set(i);
            }
        }
    }

    int[] moved(int[] starts) {
        int[] moved = starts.clone();
        int end = project.end(starts);
        List<Integer> latestFirst = IntStream.range(0, starts.length)
                .boxed()
                .filter(movable::get)
                .sorted(Comparator.comparing(i -> -starts[i]))
                .toList();
        for (int i : latestFirst) {
            int latest = latest(moved, i, end);
            int was = moved[i];
            for (int start = latest; start > was; start--) {
                moved[i] = start;
                if (fits(moved, i)) {
                    break;
                }
                moved[i] = was;
            }
        }
        return moved;
    }

    private int latest(int[] starts, int i, int end) {
        int minutes = project.activities().get(i).minutes();
        int latest = end - minutes;
        for (int j = 0; j < starts.length; j++) {
            if (project.activities().get(j).after().contains(i)) {
                latest = Math.min(latest, starts[j] - minutes);
            }
        }
        return latest;
    }

    private boolean fits(int[] starts, int i) {
        for (int j = 0; j < starts.length; j++) {
            if (conflicts.between(i, j)
                    && starts[i] < starts[j] + conflicts.lag(j, i)
                    && starts[j] < starts[i] + conflicts.lag(i, j)) {
                return false;
            }
        }
        for (Need need : project.activities().get(i).needs()) {
            for (int minute = starts[i]; minute < starts[i] + need.minutes(); minute++) {
                if (used(starts, need.resource(), minute) > project.capacities().get(need.resource())) {
                    return false;
                }
            }
        }
        return true;
    }

    private int used(int[] starts, int resource, int minute) {
        int used = 0;
        for (int j = 0; j < starts.length; j++) {
            if (starts[j] <= minute) {
                for (Need need : project.activities().get(j).needs()) {
                    used += need.resource() == resource && minute < starts[j] + need.minutes() ? need.amount() : 0;
                }
            }
        }
        return used;
    }
}

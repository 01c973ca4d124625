package batchwright.schedule.search;

import java.util.Arrays;

/**
 * Places activities one after another, each as early as those already placed allow (serial schedule generation: Kolisch, European
 * Journal of Operational Research 90, 1996, 320-333). Some order gives a shortest timetable.
 */
final class InOrder {
    private final Project project;
    private final Conflicts conflicts;
    private final int[] starts;

    InOrder(Project project, Conflicts conflicts) {
        this.project = project;
        this.conflicts = conflicts;
        this.starts = new int[project.size()];
    }

    /** Start minutes; of those whose predecessors are placed, the one with the least key always comes next, then the first. */
    int[] place(double[] key) {
        Arrays.fill(starts, -1);
        for (int placed = 0; placed < starts.length; placed++) {
            int next = next(key);
            starts[next] = earliest(next);
        }
        return starts.clone();
    }

    private int next(double[] key) {
        int best = -1;
        for (int i = 0; i < starts.length; i++) {
            boolean ready = starts[i] < 0
                    && project.activities().get(i).after().stream().allMatch(before -> starts[before] >= 0);
            if (ready && (best < 0 || key[i] < key[best])) {
                best = i;
            }
        }
        return best;
    }

    private int earliest(int i) {
        Activity activity = project.activities().get(i);
        int start = project.earliest(activity);
        for (int before : activity.after()) {
            start = Math.max(
                    start, starts[before] + project.activities().get(before).minutes());
        }
        int tried;
        do {
            tried = start;
            start = pastConflicts(i, start);
            for (Need need : activity.needs()) {
                start = pastCrowd(need, start);
            }
        } while (start > tried);
        return start;
    }

    private int pastConflicts(int i, int start) {
        for (int j = 0; j < starts.length; j++) {
            if (starts[j] >= 0
                    && conflicts.between(i, j)
                    && start < starts[j] + conflicts.lag(j, i)
                    && starts[j] < start + conflicts.lag(i, j)) {
                return starts[j] + conflicts.lag(j, i);
            }
        }
        return start;
    }

    /** The minute after the first in which too little of the resource is free; the start when there is enough all the time. */
    private int pastCrowd(Need need, int start) {
        int free = project.capacities().get(need.resource()) - need.amount();
        for (int minute = start; minute < start + need.minutes(); minute++) {
            if (used(need.resource(), minute) > free) {
                return minute + 1;
            }
        }
        return start;
    }

    private int used(int resource, int minute) {
        int used = 0;
        for (int j = 0; j < starts.length; j++) {
            if (starts[j] >= 0 && starts[j] <= minute) {
                for (Need need : project.activities().get(j).needs()) {
                    used += need.resource() == resource && minute < starts[j] + need.minutes() ? need.amount() : 0;
                }
            }
        }
        return used;
    }
}

package batchwright.schedule.search;

import java.util.Optional;

/** Of two that are in conflict, one is first; when the one cannot be, the other is. */
final class EitherFirst implements Propagator {
    private final Project project;
    private final Conflicts conflicts;

    EitherFirst(Project project, Conflicts conflicts) {
        this.project = project;
        this.conflicts = conflicts;
    }

    @Override
    public boolean tighten(Windows windows) {
        for (int i = 0; i < project.size(); i++) {
            for (int j = 0; j < project.size(); j++) {
                if (conflicts.between(i, j) && mustBeFirst(windows, i, j) && !first(windows, i, j)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean mustBeFirst(Windows windows, int i, int j) {
        return windows.isOrdered(i, j) || !canBeFirst(windows, j, i);
    }

    private boolean canBeFirst(Windows windows, int first, int second) {
        return windows.earliest(first) + conflicts.lag(first, second) <= windows.latest(second);
    }

    /** Two of which either may be first, both with a setting: those that keep each other off longest. Empty when there are none. */
    Optional<Pair> open(Windows windows) {
        Optional<Pair> best = Optional.empty();
        int longest = 0;
        for (int i = 0; i < project.size(); i++) {
            for (int j = i + 1; j < project.size(); j++) {
                int least = Math.min(conflicts.lag(i, j), conflicts.lag(j, i));
                if (least > longest
                        && haveSettings(i, j)
                        && !mustBeFirst(windows, i, j)
                        && !mustBeFirst(windows, j, i)) {
                    longest = least;
                    best = Optional.of(middle(windows, i) <= middle(windows, j) ? new Pair(i, j) : new Pair(j, i));
                }
            }
        }
        return best;
    }

    /** @param first more likely first, by the middle of its window */
    record Pair(int first, int second) {}

    private static int middle(Windows windows, int i) {
        return windows.earliest(i) + windows.latest(i);
    }

    private boolean haveSettings(int i, int j) {
        return project.activities().get(i).setting().isPresent()
                && project.activities().get(j).setting().isPresent();
    }

    private boolean first(Windows windows, int first, int second) {
        int lag = conflicts.lag(first, second);
        return windows.notBefore(second, windows.earliest(first) + lag)
                && windows.notAfter(first, windows.latest(second) - lag);
    }
}

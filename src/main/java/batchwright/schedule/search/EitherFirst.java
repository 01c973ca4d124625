package batchwright.schedule.search;

/** Of two that are in conflict, one is first; when the one cannot be, the other is. */
final class EitherFirst implements Rule {
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
                if (conflicts.between(i, j) && !canBeFirst(windows, j, i) && !first(windows, i, j)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean canBeFirst(Windows windows, int first, int second) {
        return windows.earliest(first) + conflicts.lag(first, second) <= windows.latest(second);
    }

    private boolean first(Windows windows, int first, int second) {
        int lag = conflicts.lag(first, second);
        return windows.notBefore(second, windows.earliest(first) + lag)
                && windows.notAfter(first, windows.latest(second) - lag);
    }
}

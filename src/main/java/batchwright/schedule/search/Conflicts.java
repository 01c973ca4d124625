package batchwright.schedule.search;

/**
 * Which two activities cannot go on at once, and how long one keeps the other off. All needs begin with the activity, so the one
 * that starts first is first on every resource.
 */
final class Conflicts {
    private static final int NONE = 0;
    private final int[][] lag;

    Conflicts(Project project) {
        int n = project.size();
        lag = new int[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                lag[i][j] = i == j ? NONE : lag(project, i, j);
            }
        }
    }

    private static int lag(Project project, int first, int second) {
        Activity one = project.activities().get(first);
        Activity other = project.activities().get(second);
        int lag = project.agree(one, other) ? NONE : one.minutes() + project.changeover();
        for (Need mine : one.needs()) {
            for (Need its : other.needs()) {
                if (mine.resource() == its.resource()
                        && mine.amount() + its.amount() > project.capacities().get(mine.resource())) {
                    lag = Math.max(lag, mine.minutes());
                }
            }
        }
        return lag;
    }

    boolean between(int i, int j) {
        return lag[i][j] > NONE;
    }

    /** Minutes from the start of the first to the earliest start of the second. */
    int lag(int first, int second) {
        return lag[first][second];
    }
}

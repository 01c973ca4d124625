package batchwright.schedule.search;

/** Whether anything could take from an activity what it needs at its earliest start. If not, it may as well start then. */
final class Rivals {
    private final Project project;
    private final boolean[][] follows;

    Rivals(Project project) {
        this.project = project;
        int n = project.size();
        this.follows = new boolean[n][n];
        for (int i = 0; i < n; i++) {
            for (int before : project.activities().get(i).after()) {
                follows[i][before] = true;
                for (int k = 0; k < n; k++) {
                    follows[i][k] |= follows[before][k];
                }
            }
        }
    }

    boolean mayDelay(Windows windows, int i) {
        Activity activity = project.activities().get(i);
        if (activity.setting().isPresent() && otherSetting(windows, i, activity)) {
            return true;
        }
        return activity.needs().stream().anyMatch(need -> crowded(windows, i, need));
    }

    private boolean otherSetting(Windows windows, int i, Activity activity) {
        int until = windows.earliest(i) + activity.minutes() + project.changeover();
        for (int k = 0; k < project.size(); k++) {
            Activity other = project.activities().get(k);
            if (isRival(windows, i, k, until) && !project.agree(activity, other)) {
                return true;
            }
        }
        return false;
    }

    private boolean crowded(Windows windows, int i, Need need) {
        int asked = need.amount();
        int until = windows.earliest(i) + need.minutes();
        for (int k = 0; k < project.size(); k++) {
            if (isRival(windows, i, k, until)) {
                for (Need its : project.activities().get(k).needs()) {
                    asked += its.resource() == need.resource() ? its.amount() : 0;
                }
            }
        }
        return asked > project.capacities().get(need.resource());
    }

    /** Not bound to come before or after, and may start before the minute; fixed ones count too. */
    private boolean isRival(Windows windows, int i, int k, int until) {
        return k != i && !follows[i][k] && !follows[k][i] && windows.earliest(k) < until;
    }
}

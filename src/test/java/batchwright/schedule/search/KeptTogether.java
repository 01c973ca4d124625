package batchwright.schedule.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** Whether a timetable keeps everything its project asks, minute by minute, told without the classes that search. */
final class KeptTogether {
    private KeptTogether() {}

    static boolean holds(Project project, List<Integer> starts) {
        return follows(project, starts)
                && fits(project, starts)
                && settingsAgree(project, starts)
                && nothingStands(project, starts);
    }

    /** Of what is placed so far. */
    static boolean nothingStands(Project project, List<Integer> starts) {
        for (int i = 0; i < starts.size(); i++) {
            Activity activity = project.activities().get(i);
            for (Wait wait : activity.waits()) {
                int done = starts.get(wait.before())
                        + project.activities().get(wait.before()).minutes();
                if (starts.get(i) + activity.minutes() - done > wait.most()) {
                    return false;
                }
            }
        }
        return true;
    }

    static void check(Project project, Timetable timetable) {
        assertThat(follows(project, timetable.starts())).as("order").isTrue();
        assertThat(fits(project, timetable.starts())).as("capacity").isTrue();
        assertThat(settingsAgree(project, timetable.starts())).as("settings").isTrue();
        assertThat(timetable.minutes()).as("end").isEqualTo(end(project, timetable.starts()));
        assertThat(timetable.lowerBound()).as("lower bound").isLessThanOrEqualTo(timetable.minutes());
    }

    static int end(Project project, List<Integer> starts) {
        int end = 0;
        for (int i = 0; i < starts.size(); i++) {
            end = Math.max(end, starts.get(i) + project.activities().get(i).minutes());
        }
        return end;
    }

    private static boolean follows(Project project, List<Integer> starts) {
        for (int i = 0; i < starts.size(); i++) {
            for (int before : project.activities().get(i).after()) {
                if (starts.get(i)
                        < starts.get(before) + project.activities().get(before).minutes()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean fits(Project project, List<Integer> starts) {
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            for (int minute = 0; minute < end(project, starts); minute++) {
                int used = 0;
                for (int i = 0; i < starts.size(); i++) {
                    for (Need need : project.activities().get(i).needs()) {
                        boolean now = starts.get(i) <= minute && minute < starts.get(i) + need.minutes();
                        used += need.resource() == resource && now ? need.amount() : 0;
                    }
                }
                if (used > project.capacities().get(resource)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean settingsAgree(Project project, List<Integer> starts) {
        for (int i = 0; i < starts.size(); i++) {
            Activity one = project.activities().get(i);
            if (one.setting().isEmpty()) {
                continue;
            }
            if (starts.get(i) < project.changeover()) {
                return false;
            }
            for (int j = 0; j < starts.size(); j++) {
                Activity other = project.activities().get(j);
                if (other.setting().isPresent()
                        && Math.abs(one.setting().getAsInt() - other.setting().getAsInt()) > project.tolerance()
                        && starts.get(i) <= starts.get(j)
                        && starts.get(j) < starts.get(i) + one.minutes() + project.changeover()) {
                    return false;
                }
            }
        }
        return true;
    }
}

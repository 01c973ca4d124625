package batchwright.schedule.search;

import java.util.ArrayList;
import java.util.List;

/** Never more of a resource in use than there is, by what must be in use wherever in its window an activity starts. */
final class Crowd implements Propagator {
    private record User(int activity, int amount, int minutes) {}

    private final int capacity;
    private final List<User> users = new ArrayList<>();
    private int[] sure = new int[0];

    Crowd(Project project, int resource) {
        this.capacity = project.capacities().get(resource);
        for (int i = 0; i < project.size(); i++) {
            for (Need need : project.activities().get(i).needs()) {
                if (need.resource() == resource) {
                    users.add(new User(i, need.amount(), need.minutes()));
                }
            }
        }
    }

    /** Whether all users together are more than there is. */
    boolean canBeFull() {
        return users.stream().mapToInt(User::amount).sum() > capacity;
    }

    @Override
    public boolean tighten(Windows windows) {
        if (!countSure(windows)) {
            return false;
        }
        for (User user : users) {
            if (!windows.isFixed(user.activity) && !later(windows, user)) {
                return false;
            }
        }
        return true;
    }

    private boolean countSure(Windows windows) {
        int end = 0;
        for (User user : users) {
            end = Math.max(end, windows.latest(user.activity) + user.minutes);
        }
        sure = new int[end];
        for (User user : users) {
            int sureEnd = windows.earliest(user.activity) + user.minutes;
            for (int minute = windows.latest(user.activity); minute < sureEnd; minute++) {
                sure[minute] += user.amount;
                if (sure[minute] > capacity) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean later(Windows windows, User user) {
        int start = windows.earliest(user.activity);
        int sureFrom = windows.latest(user.activity);
        int sureTo = start + user.minutes;
        for (int minute = start; minute < start + user.minutes && minute < sure.length; minute++) {
            int own = minute >= sureFrom && minute < sureTo ? user.amount : 0;
            if (sure[minute] - own + user.amount > capacity) {
                start = minute + 1;
                if (start > sureFrom) {
                    return false;
                }
            }
        }
        return windows.notBefore(user.activity, start);
    }
}

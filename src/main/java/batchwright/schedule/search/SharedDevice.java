package batchwright.schedule.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Whatever must start and end within some minutes must fit into them: what it takes of a resource times its minutes. What agrees
 * in its setting with none of the others takes all of the resource, and a changeover besides. An oven of two shelves holds two
 * trays of 30 minutes and one of another temperature in no less than 30, 10 and its own.
 */
final class SharedDevice implements Propagator {
    private record User(int activity, int work) {}

    private final Project project;
    private final int capacity;
    private final List<User> users = new ArrayList<>();

    /** For the activities with a setting that need the resource from start to end. */
    SharedDevice(Project project, int resource) {
        this.project = project;
        this.capacity = project.capacities().get(resource);
        for (int i = 0; i < project.size(); i++) {
            Activity activity = project.activities().get(i);
            for (Need need : activity.needs()) {
                if (need.resource() == resource && activity.setting().isPresent()) {
                    users.add(new User(i, need.amount() * need.minutes()));
                }
            }
        }
    }

    boolean isShared() {
        return users.size() > 1;
    }

    @Override
    public boolean tighten(Windows windows) {
        for (User first : users) {
            for (User last : users) {
                int from = windows.earliest(first.activity);
                int to = windows.latest(last.activity) + minutes(last.activity);
                if (from < to && work(within(windows, from, to)) > capacity * (to - from)) {
                    return false;
                }
            }
        }
        return true;
    }

    private List<User> within(Windows windows, int from, int to) {
        return users.stream()
                .filter(user -> windows.earliest(user.activity) >= from
                        && windows.latest(user.activity) + minutes(user.activity) <= to)
                .toList();
    }

    private int work(List<User> members) {
        int work = 0;
        int apart = 0;
        for (User user : members) {
            boolean alone = members.stream().allMatch(other -> other.activity == user.activity || !agree(user, other));
            work += alone ? capacity * minutes(user.activity) : user.work;
            apart += alone ? 1 : 0;
        }
        int changes = apart == members.size() ? apart - 1 : apart;
        return work + capacity * Math.max(0, changes) * project.changeover();
    }

    private boolean agree(User one, User other) {
        return project.agree(
                project.activities().get(one.activity), project.activities().get(other.activity));
    }

    private int minutes(int activity) {
        return project.activities().get(activity).minutes();
    }
}

package batchwright.schedule.search;

import java.util.List;

/**
 * Activities and the resources they share.
 *
 * @param capacities units there are of each resource
 * @param activities an activity follows only ones that stand before it in the list
 * @param tolerance settings that differ by no more can be held at once
 * @param changeover minutes between two activities with settings that differ by more, and before the first with a setting
 */
public record Project(List<Integer> capacities, List<Activity> activities, int tolerance, int changeover) {
    public Project {
        capacities = List.copyOf(capacities);
        activities = List.copyOf(activities);
        for (int i = 0; i < activities.size(); i++) {
            check(i, activities.get(i), capacities);
        }
    }

    private static void check(int index, Activity activity, List<Integer> capacities) {
        for (int before : activity.after()) {
            if (before < 0 || before >= index) {
                throw new IllegalArgumentException(
                        "activity (" + index + ") follows (" + before + "), which does not stand before it.");
            }
        }
        for (Need need : activity.needs()) {
            if (need.resource() >= capacities.size() || need.amount() > capacities.get(need.resource())) {
                throw new IllegalArgumentException("activity (" + index + ") can never have its need (" + need + ").");
            }
        }
    }

    int size() {
        return activities.size();
    }

    /** Whether both settings can be held at once. */
    boolean agree(Activity one, Activity other) {
        return one.setting().isEmpty()
                || other.setting().isEmpty()
                || Math.abs(one.setting().getAsInt() - other.setting().getAsInt()) <= tolerance;
    }

    /** The first minute in which an activity may start at all. */
    int earliest(Activity activity) {
        return activity.setting().isPresent() ? changeover : 0;
    }

    /** Minutes from the start of an activity until it can keep nothing off any more. */
    int span(int i) {
        Activity activity = activities.get(i);
        return activity.minutes() + (activity.setting().isPresent() ? changeover : 0);
    }

    /** When the last activity ends. */
    int end(int[] starts) {
        int end = 0;
        for (int i = 0; i < starts.length; i++) {
            end = Math.max(end, starts[i] + activities.get(i).minutes());
        }
        return end;
    }
}

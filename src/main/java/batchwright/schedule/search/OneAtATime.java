package batchwright.schedule.search;

import java.util.Arrays;

/**
 * Activities of which only one may go on at a time. Where the time between an earliest start and a latest end is too short for a
 * set of them and one more, that one must come after the set, or before it: edge finding, the quadratic algorithm of Nuijten
 * as given by Baptiste, Le Pape and Nuijten, Constraint-Based Scheduling, Kluwer 2001, section 2.1.3 (section from memory).
 */
final class OneAtATime implements Propagator {
    private static final int NONE = Integer.MIN_VALUE / 2;
    private final int[] activities;
    private final int[] minutes;

    /** Release, deadline and new release of each activity; mirrored in time for the second pass. */
    private final int[] release;

    private final int[] deadline;
    private final int[] later;
    private final int[] endFrom;
    private final Integer[] byRelease;

    /** @param minutes of each of the activities on what they share */
    OneAtATime(int[] activities, int[] minutes) {
        int n = activities.length;
        this.activities = activities.clone();
        this.minutes = minutes.clone();
        this.release = new int[n];
        this.deadline = new int[n];
        this.later = new int[n];
        this.endFrom = new int[n];
        this.byRelease = new Integer[n];
    }

    @Override
    public boolean tighten(Windows windows) {
        for (int a = 0; a < activities.length; a++) {
            release[a] = windows.earliest(activities[a]);
            deadline[a] = windows.latest(activities[a]) + minutes[a];
        }
        if (!edges()) {
            return false;
        }
        for (int a = 0; a < activities.length; a++) {
            if (!windows.notBefore(activities[a], later[a])) {
                return false;
            }
        }
        for (int a = 0; a < activities.length; a++) {
            release[a] = -windows.latest(activities[a]) - minutes[a];
            deadline[a] = -windows.earliest(activities[a]);
        }
        if (!edges()) {
            return false;
        }
        for (int a = 0; a < activities.length; a++) {
            if (!windows.notAfter(activities[a], -later[a] - minutes[a])) {
                return false;
            }
        }
        return true;
    }

    private boolean edges() {
        int n = activities.length;
        for (int a = 0; a < n; a++) {
            byRelease[a] = a;
            later[a] = release[a];
        }
        Arrays.sort(byRelease, (a, b) -> Integer.compare(release[a], release[b]));
        for (int k = 0; k < n; k++) {
            if (!upTo(deadline[k])) {
                return false;
            }
        }
        return true;
    }

    /** With the set of those that must end by a deadline; false when they cannot. */
    private boolean upTo(int end) {
        int sum = 0;
        int lastEnd = NONE;
        for (int at = activities.length - 1; at >= 0; at--) {
            int a = byRelease[at];
            if (deadline[a] <= end) {
                sum += minutes[a];
                lastEnd = Math.max(lastEnd, release[a] + sum);
                if (lastEnd > end) {
                    return false;
                }
            }
            endFrom[a] = lastEnd;
        }
        int before = NONE;
        for (int a : byRelease) {
            if (deadline[a] <= end) {
                before = Math.max(before, release[a] + sum);
                sum -= minutes[a];
            } else {
                if (release[a] + sum + minutes[a] > end) {
                    later[a] = Math.max(later[a], endFrom[a]);
                }
                if (before + minutes[a] > end) {
                    later[a] = Math.max(later[a], lastEnd);
                }
            }
        }
        return true;
    }
}

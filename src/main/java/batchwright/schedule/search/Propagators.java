package batchwright.schedule.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All rules of a project, used until none takes anything more from the windows. */
final class Propagators {
    private final Project project;
    private final EitherFirst eitherFirst;
    private final List<Propagator> rules = new ArrayList<>();

    Propagators(Project project, Conflicts conflicts, Within within) {
        this.project = project;
        rules.add(new Following(project));
        if (!within.isEmpty()) {
            rules.add(within);
        }
        this.eitherFirst = new EitherFirst(project, conflicts);
        rules.add(eitherFirst);
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            var crowd = new Crowd(project, resource);
            if (project.capacities().get(resource) == 1) {
                rules.add(oneAtATime(resource));
            } else if (crowd.canBeFull()) {
                rules.add(crowd);
            }
            var device = new SharedDevice(project, resource);
            if (device.isShared()) {
                rules.add(device);
            }
        }
        rules.addAll(new Cliques(project, conflicts).rules());
    }

    private Propagator oneAtATime(int resource) {
        List<Integer> activities = new ArrayList<>();
        List<Integer> minutes = new ArrayList<>();
        for (int i = 0; i < project.size(); i++) {
            for (Need need : project.activities().get(i).needs()) {
                if (need.resource() == resource) {
                    activities.add(i);
                    minutes.add(need.minutes());
                }
            }
        }
        return new OneAtATime(
                activities.stream().mapToInt(Integer::intValue).toArray(),
                minutes.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Windows of all timetables that end by a minute; not yet tightened. */
    Windows open(int end) {
        Windows windows = Windows.open(project.size(), Math.max(0, end));
        for (int i = 0; i < project.size(); i++) {
            windows.notBefore(i, project.earliest(project.activities().get(i)));
        }
        return windows;
    }

    /** See {@link EitherFirst#open}. */
    Optional<EitherFirst.Pair> openPair(Windows windows) {
        return eitherFirst.open(windows);
    }

    /** False when no timetable inside the windows ends by the minute. */
    boolean tighten(Windows windows, int end) {
        for (int i = 0; i < project.size(); i++) {
            if (!windows.notAfter(i, end - project.activities().get(i).minutes())) {
                return false;
            }
        }
        do {
            windows.takeChanged();
            for (Propagator rule : rules) {
                if (!rule.tighten(windows)) {
                    return false;
                }
            }
        } while (windows.takeChanged());
        return true;
    }
}

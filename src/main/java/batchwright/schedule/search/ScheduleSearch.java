package batchwright.schedule.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The shortest timetable of a project. Asks again and again for one that ends a minute sooner than the best known: first decides
 * which of two that need other settings comes first, then fixes the activity that can start first to that start; later it tries what is
 * left. Windows that no timetable fits are left at once. Every step depends on the project alone: same project, same timetable.
 * Where no timetable was found in which nothing stands too long, the best of the first ideas is the answer.
 */
public final class ScheduleSearch {
    private static final int FREE = -1;
    private final Project project;
    private final Conflicts conflicts;
    private final Within within;
    private final Propagators rules;
    private final Rivals rivals;
    private final int mostSteps;
    private final FirstIdeas ideas;
    private int[] best = {};
    private int end;
    private int steps;

    private ScheduleSearch(Project project, int mostSteps) {
        this.project = project;
        this.conflicts = new Conflicts(project);
        this.within = new Within(project);
        this.rules = new Propagators(project, conflicts, within);
        this.rivals = new Rivals(project);
        this.mostSteps = mostSteps;
        this.ideas = new FirstIdeas(project, conflicts, within);
    }

    /** @param mostSteps when to stop without a proof */
    public static Timetable of(Project project, int mostSteps) {
        return new ScheduleSearch(project, mostSteps).timetable();
    }

    private Timetable timetable() {
        ideas.rulesOfThumb();
        end = horizon();
        int bound = lowerBound();
        ideas.swap(bound);
        int[] idea = ideas.best();
        if (within.broken(idea) == 0) {
            know(idea);
        }
        boolean complete = true;
        if (end > bound) {
            int[] postponed = new int[project.size()];
            Arrays.fill(postponed, FREE);
            complete = search(rules.open(end), postponed, bound);
        }
        if (best.length == 0) {
            // Something stands too long in every timetable that was found; of how long the others take nothing is
            // known.
            int itsEnd = project.end(idea);
            return new Timetable(asList(idea), itsEnd, Math.min(bound, itsEnd), steps);
        }
        return new Timetable(asList(best), end, complete ? end : bound, steps);
    }

    private static List<Integer> asList(int[] starts) {
        return Arrays.stream(starts).boxed().toList();
    }

    /** By when some timetable has ended, if there is one: with a pause before each activity that no rule needs to be longer. */
    private int horizon() {
        int known = project.end(ideas.best());
        if (within.broken(ideas.best()) == 0) {
            return known;
        }
        int all = 0;
        for (int i = 0; i < project.size(); i++) {
            all += project.span(i);
        }
        return Math.max(known, all) + 1;
    }

    private void know(int[] starts) {
        best = starts;
        end = project.end(starts);
    }

    /** The least end for which the rules alone leave something. */
    private int lowerBound() {
        int least = 0;
        int most = end;
        while (least < most) {
            int middle = (least + most) / 2;
            if (rules.tighten(rules.open(middle), middle)) {
                most = middle;
            } else {
                least = middle + 1;
            }
        }
        return least;
    }

    /** Splits in two, searches the one part and goes on with the other. False when stopped before all was seen. */
    private boolean search(Windows windows, int[] postponed, int bound) {
        while (true) {
            if (end == bound) {
                return true;
            }
            if (steps++ >= mostSteps) {
                return false;
            }
            if (!rules.tighten(windows, end - 1)) {
                return true;
            }
            Optional<EitherFirst.Pair> pair = rules.openPair(windows);
            int next = pair.isPresent() ? FREE : next(windows, postponed);
            Windows one = windows.copy();
            if (pair.isPresent()) {
                one.order(pair.get().first(), pair.get().second());
                windows.order(pair.get().second(), pair.get().first());
            } else if (next != FREE) {
                one.notAfter(next, windows.earliest(next));
            } else {
                if (allFixed(windows)) {
                    know(windows.starts());
                }
                return true;
            }
            if (next != FREE && !within.isWaitedFor(next) && !rivals.mayDelay(windows, next)) {
                windows.notAfter(next, windows.earliest(next)); // to start later would be of no use
            } else if (!search(one, postponed.clone(), bound)) {
                return false;
            } else if (next != FREE) {
                postponed[next] = windows.earliest(next);
            }
        }
    }

    private boolean allFixed(Windows windows) {
        for (int i = 0; i < project.size(); i++) {
            if (!windows.isFixed(i)) {
                return false;
            }
        }
        return true;
    }

    /** The activity that can start first, of those the one that must start first; not one postponed and not pushed since. */
    private int next(Windows windows, int[] postponed) {
        int best = FREE;
        for (int i = 0; i < project.size(); i++) {
            boolean open = !windows.isFixed(i) && windows.earliest(i) > postponed[i];
            if (open && (best == FREE || isSooner(windows, i, best))) {
                best = i;
            }
        }
        for (int i = 0; i < project.size() && best != FREE; i++) {
            if (!windows.isFixed(i)
                    && !within.isWaitedFor(i)
                    && windows.earliest(i) == postponed[i]
                    && windows.earliest(i) + project.span(i) <= windows.earliest(best)) {
                return FREE; // nothing comes that could push it: it may as well not have been postponed
            }
        }
        return best;
    }

    private static boolean isSooner(Windows windows, int one, int other) {
        int byStart = Integer.compare(windows.earliest(one), windows.earliest(other));
        return byStart < 0 || (byStart == 0 && windows.latest(one) < windows.latest(other));
    }
}

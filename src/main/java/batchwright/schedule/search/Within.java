package batchwright.schedule.search;

import java.util.List;
import java.util.stream.IntStream;

/** What is done stands no longer than it may until the activity that waits for it has ended. */
final class Within implements Propagator {
    private record Pair(int before, int after, int most) {}

    private final List<Pair> pairs;

    Within(Project project) {
        this.pairs = IntStream.range(0, project.size())
                .boxed()
                .flatMap(i -> project.activities().get(i).waits().stream()
                        .map(wait -> new Pair(wait.before(), i, fromStartToStart(project, wait, i))))
                .toList();
    }

    private static int fromStartToStart(Project project, Wait wait, int after) {
        return project.activities().get(wait.before()).minutes()
                + wait.most()
                - project.activities().get(after).minutes();
    }

    boolean isEmpty() {
        return pairs.isEmpty();
    }

    /** Whether somebody waits for what this activity has done. */
    boolean isWaitedFor(int activity) {
        return pairs.stream().anyMatch(pair -> pair.before == activity);
    }

    /** By how many minutes starts break the rule, all together. */
    int broken(int[] starts) {
        int minutes = 0;
        for (Pair pair : pairs) {
            minutes += Math.max(0, starts[pair.after] - starts[pair.before] - pair.most);
        }
        return minutes;
    }

    @Override
    public boolean tighten(Windows windows) {
        for (Pair pair : pairs) {
            if (!windows.notAfter(pair.after, windows.latest(pair.before) + pair.most)
                    || !windows.notBefore(pair.before, windows.earliest(pair.after) - pair.most)) {
                return false;
            }
        }
        return true;
    }
}

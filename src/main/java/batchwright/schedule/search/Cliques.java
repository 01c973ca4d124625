package batchwright.schedule.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Sets of activities in which every two conflict, for whatever reason: too many shelves, or other settings. They go on one
 * at a time. Not all such sets: one grown greedily from each pair, the longest activity first.
 */
final class Cliques {
    private static final int LEAST = 3;
    private final Project project;
    private final Conflicts conflicts;

    Cliques(Project project, Conflicts conflicts) {
        this.project = project;
        this.conflicts = conflicts;
    }

    /** Rules for the sets that hold an activity with a setting; the others are on one resource and have their rule. */
    List<Propagator> rules() {
        Set<List<Integer>> found = new LinkedHashSet<>();
        List<Integer> longestFirst = IntStream.range(0, project.size())
                .boxed()
                .sorted(Comparator.comparing(i -> -project.span(i)))
                .toList();
        for (int one : longestFirst) {
            for (int other : longestFirst) {
                if (project.activities().get(one).setting().isPresent() && conflicts.between(one, other)) {
                    found.add(grown(one, other, longestFirst));
                }
            }
        }
        return found.stream()
                .filter(clique -> clique.size() >= LEAST)
                .<Propagator>map(this::rule)
                .toList();
    }

    private List<Integer> grown(int one, int other, List<Integer> candidates) {
        List<Integer> clique = new ArrayList<>(List.of(one, other));
        for (int candidate : candidates) {
            if (clique.stream().allMatch(member -> conflicts.between(member, candidate))) {
                clique.add(candidate);
            }
        }
        return clique.stream().sorted().toList();
    }

    /** Each keeps the others off for at least the shortest time for which it keeps one of them off. */
    private Propagator rule(List<Integer> clique) {
        int[] activities = clique.stream().mapToInt(Integer::intValue).toArray();
        int[] minutes = IntStream.of(activities)
                .map(i -> IntStream.of(activities)
                        .filter(j -> j != i)
                        .map(j -> conflicts.lag(i, j))
                        .min()
                        .orElseThrow())
                .toArray();
        return new OneAtATime(activities, minutes);
    }
}

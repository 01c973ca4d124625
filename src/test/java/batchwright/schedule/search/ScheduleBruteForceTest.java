package batchwright.schedule.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small kitchens: every start minute of every activity is tried, so nothing rests on how timetables are made. */
class ScheduleBruteForceTest {
    private static final int SEEDS = Integer.getInteger("batchwright.seeds", 200);
    private static final int ACTIVITIES = 6;
    private static final int MOST_MINUTES = 4;

    static LongStream seeds() {
        return LongStream.range(0, SEEDS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void none_ends_sooner(long seed) {
        Project project = RandomProjects.of(seed, ACTIVITIES, MOST_MINUTES);

        Timetable found = ScheduleSearch.of(project, 10_000);

        KeptTogether.check(project, found);
        assertThat(found.lowerBound()).isEqualTo(found.minutes());
        assertThat(someTimetableEndsBy(project, found.minutes() - 1, new ArrayList<>()))
                .as("one ends sooner than " + found)
                .isFalse();
    }

    /** As long as all activities with all changes of the oven: if none fits into that, none does. */
    @ParameterizedTest
    @MethodSource("seeds")
    void none_ends_sooner_in_which_nothing_stands_too_long(long seed) {
        Project project = RandomProjects.withWaits(seed, ACTIVITIES - 1, MOST_MINUTES);

        Timetable found = ScheduleSearch.of(project, 10_000);

        boolean stands = !KeptTogether.nothingStands(project, found.starts());
        int all = project.activities().stream()
                .mapToInt(a -> a.minutes() + project.changeover())
                .sum();
        assertThat(someTimetableEndsBy(project, stands ? all : found.minutes() - 1, new ArrayList<>()))
                .as("a better one than " + found)
                .isFalse();
        if (!stands) {
            KeptTogether.check(project, found);
            assertThat(found.lowerBound()).isEqualTo(found.minutes());
        }
    }

    private static boolean someTimetableEndsBy(Project project, int end, List<Integer> starts) {
        if (!KeptTogether.holds(project, starts)) {
            return false;
        }
        int next = starts.size();
        if (next == project.activities().size()) {
            return true;
        }
        int latest = end - project.activities().get(next).minutes();
        for (int start = 0; start <= latest; start++) {
            starts.add(start);
            boolean found = someTimetableEndsBy(project, end, starts);
            starts.remove(next);
            if (found) {
                return true;
            }
        }
        return false;
    }
}

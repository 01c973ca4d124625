package batchwright.schedule.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every project, however large, proven or not. */
class SchedulePropertiesTest {
    private static final int ACTIVITIES = 16;
    private static final int MOST_MINUTES = 30;
    private static final int STEPS = 3_000;

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    private static Project project(long seed) {
        return RandomProjects.of(seed, ACTIVITIES, MOST_MINUTES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void it_keeps_order_capacity_and_settings(long seed) {
        KeptTogether.check(project(seed), ScheduleSearch.of(project(seed), STEPS));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_same_project_has_the_same_timetable(long seed) {
        assertThat(ScheduleSearch.of(project(seed), STEPS)).isEqualTo(ScheduleSearch.of(project(seed), STEPS));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void more_of_a_resource_never_takes_longer(long seed) {
        Project project = project(seed);
        Timetable before = ScheduleSearch.of(project, STEPS);
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            List<Integer> more = new ArrayList<>(project.capacities());
            more.set(resource, more.get(resource) + 1);
            var richer = new Project(more, project.activities(), project.tolerance(), project.changeover());

            assertThat(ScheduleSearch.of(richer, STEPS).lowerBound()).isLessThanOrEqualTo(before.minutes());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_search_that_is_stopped_says_so_and_its_bound_holds(long seed) {
        Timetable full = ScheduleSearch.of(project(seed), STEPS);
        Timetable stopped = ScheduleSearch.of(project(seed), 1);

        assertThat(stopped.lowerBound()).isLessThanOrEqualTo(full.minutes());
        assertThat(stopped.minutes()).isGreaterThanOrEqualTo(full.lowerBound());
    }
}

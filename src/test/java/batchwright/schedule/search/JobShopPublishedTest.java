package batchwright.schedule.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Makespans proven by others; sources stand in published/job_shop.txt. */
class JobShopPublishedTest {
    static List<JobShops> published() {
        return JobShops.published();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void the_shortest_makespan_is_the_published_one(JobShops shop) {
        Timetable found = ScheduleSearch.of(shop.project(), 300_000);

        assertThat(found.minutes()).isEqualTo(shop.optimum());
        assertThat(found.lowerBound()).isEqualTo(found.minutes());
        KeptTogether.check(shop.project(), found);
    }
}

package batchwright.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Counted on paper. */
class BoxesLeftTest {
    private static final String FILLED = "2026-11-29 filled 3 ragu for anna in fridge until 2026-12-02";
    private static final String FROZEN = "2026-11-29 filled 2 ragu for anna in freezer until 2027-01-28";

    private static BoxesLeft of(String... lines) {
        return BoxesLeft.of(BookOf.lines(lines));
    }

    @Test
    void what_must_go_first_goes_first() {
        var left = of(FROZEN, FILLED, "2026-11-30 ate anna 2 ragu", "2026-12-01 ate anna 2 ragu");

        assertThat(left.lots()).hasSize(1);
        assertThat(left.lots().get(0).place()).isEqualTo(Event.Place.FREEZER);
        assertThat(left.lots().get(0).count()).isEqualTo(1);
        assertThat(left.shortfalls()).isEmpty();
    }

    @Test
    void a_container_eaten_twice_is_noticed_at_its_line() {
        var left = of(FILLED, "2026-11-30 ate anna 3 ragu", "2026-11-30 ate anna ragu");

        assertThat(left.lots()).isEmpty();
        assertThat(left.shortfalls()).hasSize(1);
        assertThat(left.shortfalls().get(0).entry().line()).isEqualTo(3);
        assertThat(left.shortfalls().get(0).says()).isEqualTo("there is no container of ragu for anna left");
    }

    @Test
    void nobody_eats_what_is_somebody_elses_without_saying_so() {
        var without = of(FILLED, "2026-11-30 ate ben 1 ragu");
        var with = of(FILLED, "2026-11-30 ate ben 1 ragu of anna", "2026-11-30 gave away 1 ragu of anna");

        assertThat(without.shortfalls()).hasSize(1);
        assertThat(with.shortfalls()).isEmpty();
        assertThat(with.of("anna").get(0).count()).isEqualTo(1);
    }

    @Test
    void more_eaten_than_there_is() {
        assertThat(of(FILLED, "2026-11-30 ate anna 5 ragu").shortfalls().get(0).says())
                .isEqualTo("there are only 3 of ragu for anna left");
    }

    /** Thawed overnight and eaten within a day of it; what was thawed goes first. */
    @Test
    void what_is_thawed_keeps_a_day() {
        var left = of(FILLED, FROZEN, "2026-11-30 thawed ragu of anna");

        assertThat(left.lots().get(0).thawed()).isTrue();
        assertThat(left.lots().get(0).until()).hasToString("2026-12-01");
        assertThat(left.lots()).extracting(BoxesLeft.Lot::count).containsExactly(1, 3, 1);
        assertThat(of(FILLED, "2026-11-30 thawed ragu of anna")
                        .shortfalls()
                        .get(0)
                        .says())
                .isEqualTo("there is no container of ragu for anna left in the freezer");
    }

    @Test
    void what_is_frozen_later_keeps_two_months_and_stays_as_it_was_filled() {
        var left = of(FILLED, "2026-12-01 froze 2 ragu of anna");

        assertThat(left.lots()).extracting(BoxesLeft.Lot::count).containsExactly(1, 2);
        assertThat(left.lots().get(1).until()).hasToString("2027-01-30");
        assertThat(left.lots().get(1).filled()).hasToString("2026-11-29");
        assertThat(left.notToFreeze()).isEmpty();
    }

    @Test
    void what_was_thawed_or_is_past_its_day_is_not_frozen() {
        String thawed = "2026-11-30 thawed ragu of anna";

        assertThat(of(FROZEN, thawed, "2026-12-01 froze ragu of anna")
                        .notToFreeze()
                        .get(0)
                        .says())
                .isEqualTo("ragu for anna was thawed before");
        assertThat(of(FILLED, "2026-12-03 froze ragu of anna")
                        .notToFreeze()
                        .get(0)
                        .says())
                .isEqualTo("ragu for anna was past its last day, 2026-12-02");
        assertThat(of(FILLED, FROZEN, thawed, "2026-12-01 froze 3 ragu of anna").notToFreeze())
                .isEmpty();
    }

    @Test
    void what_is_past_its_last_day_is_not_what_was_eaten() {
        var left = of(FROZEN, FILLED, "2026-12-04 ate anna 2 ragu");

        assertThat(left.lots()).hasSize(1);
        assertThat(left.lots().get(0).place()).isEqualTo(Event.Place.FRIDGE);
    }
}

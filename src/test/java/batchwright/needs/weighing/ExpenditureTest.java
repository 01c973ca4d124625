package batchwright.needs.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.dynamics.HallChow2011;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a record does to the two figures and their bands. */
class ExpenditureTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final HallChow2011 BODY = HallChow2011.of(new Mass(80), new Mass(20), new Energy(2600), 1.5);
    private static final Prior PRIOR = new Prior(2600, 300, BODY);

    private final Random random = new Random(1);
    private final List<WeighedDay> days = new ArrayList<>();

    /** From 80 kg, with noise of 0.3 kg. */
    private void record(int count, double kgADay, DayIntake intake) {
        for (int i = 0; i < count; i++) {
            double kg = 80 + kgADay * days.size() + 0.3 * random.nextGaussian();
            days.add(new WeighedDay(FIRST.plusDays(days.size()), OptionalDouble.of(kg), intake, Set.of()));
        }
    }

    private Expenditure found() {
        return Expenditure.of(PRIOR, days).orElseThrow();
    }

    private void weighed(int day, double kg, DayMark... marks) {
        days.set(
                day,
                new WeighedDay(
                        days.get(day).date(),
                        OptionalDouble.of(kg),
                        days.get(day).intake(),
                        Set.of(marks)));
    }

    /**
     * 20 kg of fat, 2000 kcal, 0.5 kg lost a week on a straight line (so without upkeep): 2488 kcal burnt, 2661 hold, worked out apart.
     * Most of it is learned in 12 weeks.
     */
    @Test
    void burnt_and_holding_are_two_figures() {
        record(84, -0.5 / 7, new DayIntake(2000, 0, true));
        var straight = new HallChow2011(BODY.storedKcalPerKg(), BODY.dynamicKcalPerKg(), 0);
        Expenditure found = Expenditure.of(new Prior(2600, 300, straight), days).orElseThrow();

        assertThat(found.now().likely()).isCloseTo(2488, within(40.0));
        assertThat(found.holds().likely()).isCloseTo(2661, within(50.0));
        assertThat(found.holds().likely() - found.now().likely()).isCloseTo(2660.7 - 2488.0, within(15.0));
        assertThat(found.isMeasured()).isTrue();
    }

    @Test
    void nothing_weighed_is_no_figure_and_one_weighing_is_the_equation() {
        days.add(new WeighedDay(FIRST, OptionalDouble.empty(), new DayIntake(2000, 0, true), Set.of()));
        assertThat(Expenditure.of(PRIOR, days)).isEmpty();

        record(1, 0, new DayIntake(2000, 0, true));
        assertThat(found().holds().likely()).isCloseTo(2600, within(5.0));
        assertThat(found().holds().sd()).isCloseTo(300, within(2.0));
        assertThat(found().isMeasured()).isFalse();
    }

    @Test
    void the_band_widens_with_what_nobody_weighed_out() {
        record(42, 0, new DayIntake(2600, 0, true));
        double planned = found().holds().sd();
        days.replaceAll(day -> new WeighedDay(day.date(), day.weightKg(), new DayIntake(1300, 1300, true), Set.of()));

        assertThat(planned).isBetween(60.0, 125.0);
        assertThat(found().holds().sd()).isGreaterThan(planned + 60);
    }

    /** Ten days without a record are not ten days without food. */
    @Test
    void days_without_a_record_are_missing_not_empty() {
        record(42, 0, new DayIntake(2600, 0, true));
        Expenditure all = found();
        for (int i = 20; i < 30; i++) {
            days.set(i, WeighedDay.empty(days.get(i).date()));
        }
        Expenditure some = found();
        assertThat(some.holds().likely()).isCloseTo(all.holds().likely(), within(60.0));
        assertThat(some.holds().sd()).isGreaterThan(all.holds().sd());

        days.subList(20, 30).clear();
        assertThat(found().holds()).isEqualTo(some.holds());
        assertThat(found().trend()).hasSize(42);
    }

    @Test
    void an_odd_weight_is_left_out_and_named() {
        record(42, 0, new DayIntake(2600, 0, true));
        weighed(40, 82.2);
        weighed(35, 7.9);

        assertThat(found().leftOut())
                .extracting(UnusedWeighing::date, UnusedWeighing::why)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(FIRST.plusDays(35), UnusedWeighing.Why.MISTYPED),
                        org.assertj.core.groups.Tuple.tuple(FIRST.plusDays(40), UnusedWeighing.Why.ODD));
        assertThat(found().recent().moved()).isEmpty();
        assertThat(found().weightKg()).isCloseTo(80, within(0.5));
    }

    @Test
    void a_weight_that_stays_is_followed() {
        record(42, 0, new DayIntake(2600, 0, true));
        for (int i = 36; i < 42; i++) {
            weighed(i, 77.5 + 0.1 * (i % 2));
        }

        assertThat(found().recent().moved()).containsExactly(FIRST.plusDays(37));
        assertThat(found().weightKg()).isCloseTo(77.6, within(0.5));
    }

    @Test
    void days_of_illness_and_travel_tell_no_weight() {
        record(42, 0, new DayIntake(2600, 0, true));
        Expenditure well = found();
        weighed(20, 78.5, DayMark.ILL);
        weighed(21, 78.4, DayMark.ILL);
        weighed(30, 81.4, DayMark.TRAVEL);

        assertThat(found().leftOut())
                .extracting(UnusedWeighing::why)
                .containsExactly(UnusedWeighing.Why.ILL, UnusedWeighing.Why.ILL, UnusedWeighing.Why.TRAVEL);
        assertThat(found().holds().likely()).isCloseTo(well.holds().likely(), within(60.0));
    }

    /** 0.9 kg of water within a week is no food. */
    @Test
    void creatine_is_water() {
        record(42, 0, new DayIntake(2600, 0, true));
        for (int i = 21; i < 42; i++) {
            double kg = days.get(i).weightKg().orElseThrow() + 0.9 * (1 - Math.exp(-(i - 20) / 4.0));
            weighed(i, kg);
        }
        double unsaid = found().holds().likely();
        weighed(21, days.get(21).weightKg().orElseThrow(), DayMark.CREATINE_STARTED);

        assertThat(unsaid).isLessThan(2500);
        assertThat(found().holds().likely()).isGreaterThan(unsaid + 60).isLessThan(2680);
    }

    /** A period a month, 0.45 kg before it: who logs it gets the figure of who has none. */
    @Test
    void water_of_the_period_is_no_food() {
        record(35, 0, new DayIntake(2600, 0, true));
        double without = found().holds().likely();
        for (int i = 29; i < 35; i++) {
            weighed(i, days.get(i).weightKg().orElseThrow() + 0.45 * (1 - Math.abs(34 - i) / 6.0));
        }
        double unsaid = found().holds().likely();
        weighed(6, days.get(6).weightKg().orElseThrow(), DayMark.PERIOD_STARTED);
        double said = found().holds().likely();

        assertThat(Math.abs(said - without)).isLessThan(Math.abs(unsaid - without));
    }

    @Test
    void a_day_twice_is_a_fault_of_the_caller() {
        record(2, 0, DayIntake.NOT_LOGGED);
        days.add(days.get(0));

        assertThatThrownBy(() -> Expenditure.of(PRIOR, days)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void three_years_are_followed() {
        record(1100, 0, new DayIntake(2600, 0, true));

        assertThat(found().trend()).hasSize(1100);
        assertThat(found().holds().sd()).isBetween(50.0, 125.0);
    }
}

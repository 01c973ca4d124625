package batchwright.needs.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.caution.Caution;
import batchwright.needs.learning.TargetAdvice.Offer;
import batchwright.needs.learning.TargetAdvice.Stop;
import batchwright.needs.learning.TargetAdvice.Wait;
import batchwright.needs.learning.TargetAdvice.WaitReason;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.DayMark;
import batchwright.needs.weighing.WeighedDay;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each rule of the careful target, by a record made for it. */
class CarefulTargetTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final double KG = 85;
    private static final TestEater MAN =
            TestEater.of(TestEater.body(Sex.MALE, KG, 180, 35)).pal(1.6);

    private final List<WeighedDay> days = new ArrayList<>();

    private static Needs losing() {
        return MAN.percentAWeek(-0.5).needs();
    }

    /** Weight on a straight line, give or take 0.2 kg in turn, and every day the same food. */
    private void record(int count, double kgAWeek, DayIntake intake) {
        double from = days.isEmpty() ? KG : days.get(days.size() - 1).weightKg().orElse(KG);
        for (int i = 0; i < count; i++) {
            int day = days.size();
            double seen = from + kgAWeek * i / 7 + (day % 2 == 0 ? 0.2 : -0.2);
            days.add(new WeighedDay(FIRST.plusDays(day), OptionalDouble.of(seen), intake, Set.of()));
        }
    }

    private static DayIntake planned(double kcal) {
        return new DayIntake(kcal, 0, true);
    }

    private LocalDate today() {
        return FIRST.plusDays(days.size() - 1L);
    }

    private TargetAdvice advice(Needs needs, TargetStep... steps) {
        return learned(needs, steps).advice();
    }

    private Learned learned(Needs needs, TargetStep... steps) {
        return Learned.of(needs, days, List.of(steps), today()).orElseThrow();
    }

    private static int aim(Needs needs) {
        return needs.target().orElseThrow().energyAimKcal();
    }

    private static WaitReason reason(TargetAdvice advice) {
        assertThat(advice).isInstanceOf(Wait.class);
        return ((Wait) advice).reason();
    }

    @Test
    void nothing_before_14_days() {
        record(13, 0, planned(1900));

        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.TOO_EARLY);
    }

    @Test
    void nothing_without_8_weighings_or_10_logged_days() {
        record(28, 0, DayIntake.NOT_LOGGED);
        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.TOO_EARLY);

        days.replaceAll(day -> new WeighedDay(
                day.date(),
                day.date().getDayOfWeek().getValue() == 1 ? day.weightKg() : OptionalDouble.empty(),
                planned(1900),
                Set.of()));
        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.TOO_EARLY);
    }

    /** Who should lose half a per cent a week and does, stays where they are. */
    @Test
    void a_target_that_fits_stays() {
        record(42, -0.005 * KG, planned(aim(losing())));

        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.NEAR_ENOUGH);
    }

    /** Weight stands still at the deficit: the step is down, one step and no more. */
    @Test
    void a_step_down_is_at_most_150_kcal_and_7_per_cent() {
        record(42, 0, planned(aim(losing())));

        Offer offer = (Offer) advice(losing());
        assertThat(offer.fromKcal() - offer.toKcal())
                .isPositive()
                .isLessThanOrEqualTo((int) Math.min(150, 0.07 * offer.fromKcal()) + 1);
        assertThat(offer.secondCut()).isFalse();
        assertThat(offer.holdsKcal()).isCloseTo(losing().total().kcal() - 150, within(15.0));
    }

    @Test
    void a_step_up_likewise() {
        record(42, -0.85, planned(aim(losing())));

        Offer offer = (Offer) advice(losing());
        assertThat(offer.toKcal() - offer.fromKcal()).isBetween(50, 151);
    }

    @Test
    void one_step_in_14_days_and_the_second_cut_is_said() {
        record(42, 0, planned(aim(losing())));
        double once = losing().total().kcal() - 150;

        Wait wait = (Wait) advice(losing(), new TargetStep(today().minusDays(13), once));
        assertThat(wait.reason()).isEqualTo(WaitReason.CHANGED_LATELY);
        assertThat(wait.until()).contains(today().plusDays(1));

        Offer offer = (Offer) advice(losing(), new TargetStep(today().minusDays(14), once));
        assertThat(offer.secondCut()).isTrue();
        assertThat(offer.holdsKcal()).isLessThan(once);
    }

    @Test
    void water_settles_first() {
        record(42, 0, planned(aim(losing())));
        WeighedDay ill = days.get(36);
        days.set(36, new WeighedDay(ill.date(), ill.weightKg(), ill.intake(), Set.of(DayMark.ILL)));

        Wait wait = (Wait) advice(losing());
        assertThat(wait.reason()).isEqualTo(WaitReason.SETTLING);
        assertThat(wait.until()).contains(ill.date().plusDays(10));
    }

    @Test
    void not_down_when_logging_got_worse() {
        double kcal = aim(losing());
        record(28, 0, planned(kcal));
        record(14, 0, new DayIntake(0.6 * kcal, 0.4 * kcal, true));
        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.LOGGING_WORSE);

        for (int i = 28; i < 42; i++) {
            WeighedDay day = days.get(i);
            days.set(
                    i,
                    new WeighedDay(
                            day.date(), day.weightKg(), i % 2 == 0 ? planned(kcal) : DayIntake.NOT_LOGGED, Set.of()));
        }
        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.LOGGING_WORSE);
    }

    /** A man whose weight stands at 1100 kcal writes down less than he eats. */
    @Test
    void not_down_when_the_record_holds_less_than_a_body_burns() {
        record(56, 0, planned(1100));

        assertThat(reason(advice(losing()))).isEqualTo(WaitReason.RECORD_TOO_LOW);
        assertThat(learned(losing()).told()).extracting(Caution::code).contains("record_may_be_short");
    }

    /** A small woman at the floor of 1200 kcal: whatever her weight says, the target does not go below it. */
    @Test
    void never_below_the_limits_of_needs() {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, KG, 150, 60))
                .pal(1.4)
                .kcalADay(-400)
                .needs();
        TargetAdvice advice;
        var steps = new ArrayList<TargetStep>();
        for (int round = 0; round < 8; round++) {
            record(15, 0, planned(1310));
            advice = Learned.of(needs, days, steps, today()).orElseThrow().advice();
            if (advice instanceof Offer offer) {
                assertThat(offer.toKcal()).isGreaterThanOrEqualTo(1200);
                steps.add(new TargetStep(today(), offer.holdsKcal()));
            }
        }
        assertThat(advice(needs, steps.toArray(new TargetStep[0]))).isInstanceOf(Wait.class);
    }

    @Test
    void a_fast_loss_stops_everything_and_points_to_a_doctor() {
        record(42, -0.018 * KG, planned(aim(losing())));

        Stop stop = (Stop) advice(losing());
        assertThat(stop.why()).extracting(Caution::code).containsExactly("weight_falls_fast");
        assertThat(stop.why().get(0).text()).contains("doctor");
    }

    @Test
    void so_does_5_per_cent_in_a_month_that_ends() {
        record(14, 0, planned(aim(losing())));
        record(20, -0.021 * KG, planned(aim(losing())));
        record(4, 0, planned(aim(losing())));

        assertThat(advice(MAN.needs())).isInstanceOf(Stop.class);
    }

    @Test
    void a_jump_that_stays_is_asked_about() {
        double kcal = aim(losing());
        record(35, 0, planned(kcal));
        for (int i = 0; i < 5; i++) {
            days.add(new WeighedDay(FIRST.plusDays(days.size()), OptionalDouble.of(KG - 3), planned(kcal), Set.of()));
        }

        Stop stop = (Stop) advice(losing());
        assertThat(stop.why()).extracting(Caution::code).containsExactly("weight_jumped");
    }

    /** 0.8 % a week is told at once; 0.05 % a week only shows as an offer once it is sure. */
    @Test
    void who_gains_too_fast_hears_of_it_before_who_gains_too_slowly() {
        Needs gaining = MAN.percentAWeek(0.3).needs();
        record(16, 0.008 * KG, planned(aim(gaining)));
        assertThat(learned(gaining).told()).extracting(Caution::code).contains("gains_faster_than_usual");

        days.clear();
        record(16, 0.0005 * KG, planned(aim(gaining)));
        assertThat(learned(gaining).told()).isEmpty();
        assertThat(advice(gaining)).isInstanceOf(Wait.class);

        record(26, 0.0005 * KG, planned(aim(gaining)));
        Offer offer = (Offer) advice(gaining);
        assertThat(offer.toKcal()).isGreaterThan(offer.fromKcal());
    }

    /** Who gets no figures from needs gets none from weighings. */
    @Test
    void nothing_for_whom_nothing_is_planned() {
        record(42, 0, planned(1900));
        Needs refused =
                MAN.health("eating_disorder", Answer.YES).percentAWeek(-0.5).needs();

        assertThat(refused.stopsPlanning()).isTrue();
        assertThat(Learned.of(refused, days, List.of(), today())).isEmpty();
    }

    /** The present weight counts, not that of the profile: a loss ends where needs say that it has to. */
    @Test
    void a_loss_ends_where_needs_say() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 75, 180, 35))
                .pal(1.6)
                .percentAWeek(-0.5)
                .needs();
        assertThat(needs.stopsPlanning()).isFalse();
        for (int i = 0; i < 42; i++) {
            days.add(new WeighedDay(
                    FIRST.plusDays(i), OptionalDouble.of(59.5 - 0.01 * i), planned(aim(needs)), Set.of()));
        }

        assertThat(advice(needs)).isInstanceOf(Stop.class);
    }
}

package batchwright.needs.weighing;

import batchwright.needs.weighing.kalman.Belief;
import batchwright.needs.weighing.kalman.Moment;
import batchwright.needs.weighing.kalman.Smoother;
import java.util.ArrayList;
import java.util.List;

/** From the course of the filter to figures for people. */
final class Follow {
    /** What energy per kg may be off by, as a share: body fat that is not measured, and training; our choice. */
    private static final double ENERGY_PER_KG_SHARE = 0.07;
    /** What the share of a change of intake that is burnt may be off by, for one person; our choice. */
    private static final double BURNT_SHARE = 0.06;

    private final Prior prior;
    private final List<WeighedDay> days;
    private final WeightCourse course;
    private final UsualIntake usual;

    /** @param days without gaps */
    Follow(Prior prior, List<WeighedDay> days) {
        this.prior = prior;
        this.days = days;
        this.course = new WeightCourse(prior, days);
        this.usual = new UsualIntake(days, prior.kcal());
    }

    Expenditure expenditure() {
        List<Moment> moments = course.moments();
        List<TrendDay> trend = trend(moments);
        KcalBand holds = trend.get(trend.size() - 1).holds();
        return new Expenditure(prior, now(moments), holds, evidence(moments), trend, course.leftOut(), recent(trend));
    }

    private RecentWeeks recent(List<TrendDay> trend) {
        return RecentWeeks.of(days, trend, course.moves());
    }

    private RecordSize evidence(List<Moment> moments) {
        return new RecordSize(
                days.size(),
                (int) moments.stream()
                        .filter(moment -> moment.reading().isPresent())
                        .count(),
                (int) days.stream().filter(day -> day.intake().complete()).count());
    }

    private List<TrendDay> trend(List<Moment> moments) {
        List<Belief> smooth = Smoother.smooth(moments);
        List<TrendDay> trend = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            WeighedDay day = days.get(i);
            trend.add(new TrendDay(
                    day.date(),
                    day.weightKg(),
                    WeightModel.seenKg(smooth.get(i)),
                    WeightModel.seenSdKg(smooth.get(i)),
                    day.intake(),
                    holds(moments.get(i).after(), usual.before(i + 1))));
        }
        return trend;
    }

    private KcalBand holds(Belief belief, double intake) {
        double likely = belief.mean(WeightModel.HOLDS);
        double stored = intake - likely;
        double doubt = Math.hypot(ENERGY_PER_KG_SHARE, BURNT_SHARE) * stored;
        return new KcalBand(likely, Math.hypot(belief.sd(WeightModel.HOLDS), doubt * learned(belief)));
    }

    /** What is burnt at the present intake: of a change of intake a part is burnt too. */
    private KcalBand now(List<Moment> moments) {
        Belief belief = moments.get(moments.size() - 1).after();
        KcalBand burnt = WeightModel.burnt(belief, prior.body().burntShare(), usual.lately(), usual.latelyWrongBy());
        double doubt = ENERGY_PER_KG_SHARE * (usual.lately() - burnt.likely());
        return new KcalBand(burnt.likely(), Math.hypot(burnt.sd(), doubt * learned(belief)));
    }

    /** How much of the figure comes from weight, from 0 to 1: only that depends on energy per kg. */
    private double learned(Belief belief) {
        double left = belief.sd(WeightModel.HOLDS) / prior.sdKcal();
        return Math.max(0, 1 - left * left);
    }
}

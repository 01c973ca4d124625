package batchwright.needs.weighing;

import batchwright.needs.weighing.kalman.Belief;
import batchwright.needs.weighing.kalman.Moment;
import batchwright.needs.weighing.kalman.Reading;
import batchwright.needs.weighing.kalman.Surprise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Goes through the days of a record and keeps, for each, what is known. A weight that is too far off is left out; when the next ones
 * are off in the same way too, weight has moved, and the filter follows.
 */
final class WeightCourse {
    /** A weight is left out beyond this; our choice: of 370 honest weighings one is. */
    private static final double GATE_SDS = 3;

    /** No body does that in a day. */
    private static final double MISTYPED_SHARE = 0.05;
    /** So many in a row and on one side are no accident. */
    private static final int ODD_IN_A_ROW = 2;

    private static final int MISTYPED_IN_A_ROW = 4;
    private static final double MOVED_SHARE = 0.03;

    private static final double CREATINE_KG = 0.86; // mean of 143 trials, 0.76-0.96 kg
    private static final double CREATINE_SD_KG = 0.4; // of one person; our choice
    /** Water after an illness or a journey, and how far expenditure is off on such a day; our choice. */
    private static final double UNWELL_WATER_SD_KG = 0.7;

    private static final double UNWELL_KCAL = 400;

    private final List<WeighedDay> days;
    private final WeightModel model;
    private final UsualIntake usual;
    private final PeriodWater period;
    private final List<Moment> moments = new ArrayList<>();
    private final List<UnusedWeighing> leftOut = new ArrayList<>();
    private final List<LocalDate> moves = new ArrayList<>();
    /** How many weighings in a row were left out as too far off, and on which side. */
    private int inARow;

    private double side;

    /** @param days without gaps, at least one of them weighed */
    WeightCourse(Prior prior, List<WeighedDay> days) {
        this.days = days;
        this.model = new WeightModel(prior, WeighingNoise.of(days));
        this.usual = new UsualIntake(days, prior.kcal());
        this.period = new PeriodWater(days);
        Belief now = model.first(days.stream()
                .flatMapToDouble(day -> day.weightKg().stream())
                .findFirst()
                .orElseThrow());
        for (int i = 0; i < days.size(); i++) {
            Moment moment = moment(i, marked(i, now));
            moments.add(moment);
            now = moment.foreseen();
        }
    }

    /** One for each day. */
    List<Moment> moments() {
        return List.copyOf(moments);
    }

    List<UnusedWeighing> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Days by which weight had moved further than these weighings and this food explain. */
    List<LocalDate> moves() {
        return List.copyOf(moves);
    }

    private Belief marked(int i, Belief now) {
        WeighedDay day = days.get(i);
        Belief known = now;
        if (day.marks().contains(DayMark.CREATINE_STARTED)) {
            known = WeightModel.withWater(known, CREATINE_KG, CREATINE_SD_KG);
        }
        if (day.marks().contains(DayMark.CREATINE_STOPPED)) {
            known = WeightModel.withWater(known, -CREATINE_KG, CREATINE_SD_KG);
        }
        boolean wellAgain = i > 0 && days.get(i - 1).hidesWeight() && !day.hidesWeight();
        return wellAgain ? WeightModel.withPassingWater(known, UNWELL_WATER_SD_KG) : known;
    }

    private Moment moment(int i, Belief before) {
        WeighedDay day = days.get(i);
        var next = model.through(day.intake(), usual.before(i), day.hidesWeight() ? UNWELL_KCAL : 0);
        if (day.weightKg().isEmpty()) {
            return Moment.of(before, Optional.empty(), next);
        }
        if (day.hidesWeight()) {
            leave(day, day.marks().contains(DayMark.ILL) ? UnusedWeighing.Why.ILL : UnusedWeighing.Why.TRAVEL);
            return Moment.of(before, Optional.empty(), next);
        }
        Reading seen = model.seen(day.weightKg().getAsDouble() - period.kg(day.date()), period.sdKg(day.date()));
        Surprise surprise = seen.surprise(before);
        if (surprise.standardDeviations() <= GATE_SDS) {
            inARow = 0;
            return Moment.of(before, Optional.of(seen), next);
        }
        boolean mistyped = Math.abs(surprise.value()) > MISTYPED_SHARE * seen.value();
        inARow = side == Math.signum(surprise.value()) ? inARow + 1 : 1;
        side = Math.signum(surprise.value());
        if (inARow < (mistyped ? MISTYPED_IN_A_ROW : ODD_IN_A_ROW)) {
            leave(day, mistyped ? UnusedWeighing.Why.MISTYPED : UnusedWeighing.Why.ODD);
            return Moment.of(before, Optional.empty(), next);
        }
        inARow = 0;
        moves.add(day.date());
        double movedKg = Math.max(MOVED_SHARE * seen.value(), Math.abs(surprise.value()));
        return Moment.of(WeightModel.moved(before, movedKg), Optional.of(seen), next);
    }

    private void leave(WeighedDay day, UnusedWeighing.Why why) {
        leftOut.add(new UnusedWeighing(day.date(), day.weightKg().orElseThrow(), why));
    }
}

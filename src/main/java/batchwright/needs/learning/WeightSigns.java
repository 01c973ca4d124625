package batchwright.needs.learning;

import batchwright.needs.Needs;
import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.safety.SafetyFigure;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.RecentWeeks;
import batchwright.needs.weighing.RecordSize;
import java.util.ArrayList;
import java.util.List;

/** What weight does that a person should hear of before any figure. */
final class WeightSigns {
    private static final double FAST_PERCENT_A_WEEK = 1.5;
    private static final int FAST_FOR_DAYS = 21;
    private static final double FAST_PERCENT_A_MONTH = 5;
    private static final int MONTH_DAYS = 28;
    private static final int MOVED_LATELY_DAYS = 14;
    private static final double LIKELY = 0.674; // three in four

    private static final Citation CHOICE = Citation.designChoice(
            "no plan of this program loses more than 1 % of weight a week; 5 % in a month that nobody meant is a usual reason to see a"
                    + " doctor (common practice)");

    private WeightSigns() {}

    /** What stops everything. */
    static List<Caution> stops(Expenditure seen) {
        RecentWeeks recent = seen.recent();
        int days = seen.evidence().days();
        List<Caution> stops = new ArrayList<>();
        boolean week = days > FAST_FOR_DAYS && Math.abs(recent.percentAWeek()) >= FAST_PERCENT_A_WEEK;
        boolean month = days > MONTH_DAYS && recent.percentInAMonth() <= -FAST_PERCENT_A_MONTH;
        if (month || (week && recent.percentAWeek() < 0)) {
            stops.add(Caution.stop(
                    "weight_falls_fast",
                    "Your weight falls by "
                            + (month
                                    ? Numerals.oneDecimal(-recent.percentInAMonth()) + " % in four weeks"
                                    : Numerals.oneDecimal(-recent.percentAWeek()) + " % a week, for three weeks")
                            + ". That is faster than is good for anybody, whatever was planned. No step is offered now. Do not"
                            + " eat less than the target; see a doctor, and soon when you did not mean to lose weight, or feel weak, dizzy or ill.",
                    CHOICE));
        } else if (week) {
            stops.add(Caution.stop(
                    "weight_rises_fast",
                    "Your weight rises by " + Numerals.oneDecimal(recent.percentAWeek())
                            + " % a week, for three weeks. So fast a rise is often water, not food, so no step is offered now. See a"
                            + " doctor; at once when legs swell or breath is short.",
                    CHOICE));
        }
        recent.moved().stream()
                .filter(day -> day.plusDays(MOVED_LATELY_DAYS).isAfter(seen.lastDate()))
                .findFirst()
                .filter(day -> stops.isEmpty())
                .ifPresent(day -> stops.add(Caution.stop(
                        "weight_jumped",
                        "On " + day
                                + " your weight was another one than your weighings and your food explain, and it stayed so."
                                + " No step is offered for two weeks. Was it another scale, or a typing error? If weight moved"
                                + " by itself, ask a doctor.",
                        Citation.designChoice("two weighings in a row outside three standard deviations"))));
        return stops;
    }

    /** What is told beside the advice. */
    static List<Caution> told(Needs needs, Expenditure seen) {
        List<Caution> told = new ArrayList<>();
        RecentWeeks recent = seen.recent();
        boolean gains = needs.goal().filter(goal -> goal.change().gains()).isPresent();
        double usual = SafetyFigure.GAIN_PERCENT_A_WEEK_USUAL.value();
        boolean known = seen.evidence().days() >= RecordSize.LEAST_DAYS
                && seen.evidence().weighings() >= RecordSize.LEAST_WEIGHINGS;
        if (gains && known && recent.percentAWeek() - LIKELY * recent.sdPercentAWeek() > usual) {
            told.add(Caution.warn(
                    "gains_faster_than_usual",
                    "You gain " + Numerals.twoDecimals(recent.percentAWeek()) + " % of your weight a week; more than "
                            + Numerals.plain(usual)
                            + " % is mostly fat. The first two weeks of a larger intake hold water"
                            + " too.",
                    SafetyFigure.GAIN_PERCENT_A_WEEK_USUAL.source()));
        }
        seen.recordShortPercent()
                .ifPresent(
                        percent -> told.add(
                                Caution.warn(
                                        "record_may_be_short",
                                        "Your record holds about " + Numerals.whole(percent)
                                                + " % less than your weight and the equation"
                                                + " together say. There are several reasons, and weight cannot tell them apart: you may need less"
                                                + " than the equation says; oil, drinks and bites are easily forgotten, by nearly everybody;"
                                                + " water may hide a loss. A target by your own record works all the same, as long as you"
                                                + " record in the same way.",
                                        new Citation(
                                                "records fall 12-20 % short of what is eaten: OPEN (Subar 2003), CALERIE (Redman 2014)"))));
        return told;
    }
}

package batchwright.needs.learning;

import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.learning.TargetAdvice.Offer;
import batchwright.needs.learning.TargetAdvice.Stop;
import batchwright.needs.learning.TargetAdvice.Wait;
import batchwright.needs.learning.TargetAdvice.WaitReason;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.RecordSize;
import batchwright.person.Eater;
import batchwright.person.StepLimits;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Decides whether a target changes by what weighings say. The rules are choices of this program, set by the noise of weighings (an
 * expenditure is known to 125 kcal after three to four weeks) and by what is safe:
 *
 * <ul>
 *   <li>nothing while weight does what a clinician should see, or the present weight lets no target stand;
 *   <li>nothing before 14 days, 8 weighings and 10 logged days, within 14 days of a step, or while water settles;
 *   <li>nothing for less than 50 kcal or a third of a standard deviation;
 *   <li>no step up for who gains before 21 days;
 *   <li>no step down when logging got worse, or when the record holds less than a body burns that hardly moves;
 *   <li>one step is at most 150 kcal and 7 % of the target, and what comes out has to pass every limit of needs.
 * </ul>
 */
public final class CarefulTarget {
    static final int DAYS_BETWEEN_STEPS = StepLimits.DAYS_BETWEEN;
    static final double MOST_STEP_KCAL = StepLimits.MOST_KCAL;
    static final double MOST_STEP_SHARE = 0.07;
    private static final double LEAST_CHANGE_KCAL = 50;
    /** What weighings say is drawn to the equation already: with a whole standard deviation most targets stop 100 kcal short. */
    private static final double LEAST_SD_SHARE = 1.0 / 3;
    /** Of resting energy: who is up and about burns more. */
    private static final double LEAST_OF_RESTING = 1.1;

    private static final int HALVINGS = 4;

    /** A week more than for any other step. */
    private static final int DAYS_BEFORE_MORE_TO_GAIN = 21;

    private final Eater eater;
    private final boolean gains;
    private final Expenditure seen;
    private final List<TargetStep> steps;
    private final double present;

    private CarefulTarget(Needs needs, Expenditure seen, List<TargetStep> steps) {
        this.eater = needs.eater().withBody(needs.eater().body().withWeight(new Mass(seen.weightKg())));
        this.gains = needs.goal().filter(goal -> goal.change().gains()).isPresent();
        this.seen = seen;
        this.steps = steps;
        this.present = steps.isEmpty()
                ? needs.total().kcal()
                : steps.get(steps.size() - 1).holdsKcal();
    }

    /**
     * @param needs by the equation; with a target
     * @param seen with the equation as its prior
     * @param steps adopted before, the earliest first
     * @param today not before the last day that was seen
     */
    public static TargetAdvice advise(Needs needs, Expenditure seen, List<TargetStep> steps, LocalDate today) {
        return new CarefulTarget(needs, seen, steps).advise(today);
    }

    private TargetAdvice advise(LocalDate today) {
        var signs = WeightSigns.stops(seen);
        if (!signs.isEmpty()) {
            return new Stop(signs);
        }
        Needs now = with(present);
        if (now.stopsPlanning()) {
            return new Stop(now.cautions().stream()
                    .filter(caution -> caution.stopsPlanning())
                    .toList());
        }
        return tooSoon(today).or(this::noReason).<TargetAdvice>map(wait -> wait).orElseGet(() -> step(now));
    }

    private Needs with(double holdsKcal) {
        return NeedsCalculator.needsOf(eater, new Energy(holdsKcal));
    }

    private Optional<Wait> tooSoon(LocalDate today) {
        RecordSize evidence = seen.evidence();
        if (!evidence.isEnough()) {
            return wait(
                    WaitReason.TOO_EARLY,
                    "A target changes after " + RecordSize.LEAST_DAYS + " days with " + RecordSize.LEAST_WEIGHINGS
                            + " weighings and " + RecordSize.LEAST_LOGGED_DAYS + " days of complete records; so far "
                            + evidence.days() + ", " + evidence.weighings() + " and " + evidence.loggedDays() + ".");
        }
        Optional<LocalDate> next = steps.isEmpty()
                ? Optional.empty()
                : Optional.of(steps.get(steps.size() - 1).date().plusDays(DAYS_BETWEEN_STEPS));
        if (next.filter(today::isBefore).isPresent()) {
            return Optional.of(new Wait(
                    WaitReason.CHANGED_LATELY,
                    "The target changed less than " + DAYS_BETWEEN_STEPS + " days ago; what that does to weight shows"
                            + " later.",
                    next));
        }
        return seen.recent()
                .settles()
                .filter(today::isBefore)
                .map(until -> new Wait(
                        WaitReason.SETTLING,
                        "After an illness, a journey, creatine or another diet water moves for some days; weight tells"
                                + " little until then.",
                        Optional.of(until)));
    }

    private Optional<Wait> noReason() {
        double change = seen.holds().likely() - present;
        if (Math.abs(change)
                <= Math.max(LEAST_CHANGE_KCAL, LEAST_SD_SHARE * seen.holds().sd())) {
            return wait(
                    WaitReason.NEAR_ENOUGH,
                    "By your weighings it would be nearly the same: the difference is little, or less than they can tell.");
        }
        if (change > 0 && gains && seen.evidence().days() < DAYS_BEFORE_MORE_TO_GAIN) {
            return wait(
                    WaitReason.TOO_EARLY,
                    "Who gains gets no step up in the first " + DAYS_BEFORE_MORE_TO_GAIN
                            + " days: that weight rises too fast is worth knowing before that it rises too slowly.");
        }
        if (change < 0 && seen.now().likely() < LEAST_OF_RESTING * resting()) {
            return wait(
                    WaitReason.RECORD_TOO_LOW,
                    "Weight and record together say that you burn less than a body that hardly moves. More likely some food"
                            + " is not in the record: the target does not go down by it. Two weeks with everything"
                            + " written down would tell.");
        }
        return change < 0 && seen.recent().logsWorse()
                ? wait(
                        WaitReason.LOGGING_WORSE,
                        "Fewer days were recorded lately, or more was eaten that nobody weighed out: the target does not go"
                                + " down by that. Record two weeks as before, then look again.")
                : Optional.empty();
    }

    private double resting() {
        return with(present).restingInUse().perDay().kcal();
    }

    private TargetAdvice step(Needs before) {
        int aim = before.target().orElseThrow().energyAimKcal();
        double most = Math.min(MOST_STEP_KCAL, MOST_STEP_SHARE * aim);
        double step = Math.max(-most, Math.min(most, seen.holds().likely() - present));
        for (int i = 0; i < HALVINGS; i++) {
            Needs after = with(present + step);
            if (after.target().isEmpty()) {
                return new Wait(
                        WaitReason.AT_A_LIMIT,
                        "Your weighings ask for " + (step < 0 ? "less" : "more")
                                + ", and a limit does not let the target go there: "
                                + after.cautions().stream()
                                        .filter(caution -> caution.stopsPlanning())
                                        .map(caution -> caution.text())
                                        .findFirst()
                                        .orElse(""),
                        Optional.empty());
            }
            double moved = after.target().orElseThrow().energyAimKcal() - aim;
            if (Math.abs(moved) <= most + 1 && moved * step > 0) {
                return new Offer(Numerals.down(present + step), before, after, step < 0 && lastWentDown());
            }
            step *= moved * step > 0 ? most / Math.abs(moved) : 0.5;
        }
        return new Wait(
                WaitReason.AT_A_LIMIT,
                "A limit holds the target where it is, whatever weighings say.",
                Optional.empty());
    }

    private boolean lastWentDown() {
        int last = steps.size() - 1;
        double before =
                last > 0 ? steps.get(last - 1).holdsKcal() : seen.prior().kcal();
        return last >= 0 && steps.get(last).holdsKcal() < before;
    }

    private static Optional<Wait> wait(WaitReason reason, String says) {
        return Optional.of(new Wait(reason, says, Optional.empty()));
    }
}

package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a goal means for this body.
 *
 * @param change in energy and weight; its energy is what is planned
 * @param reach the weight by a date, when the goal is one
 * @param perKg what 1 kg stands for by body composition, when body fat is known and weight is to change
 * @param band how fast people who train are advised to go; empty when weight is held
 */
public record GoalFinding(
        Eater eater,
        BodyModel model,
        WeeklyChange change,
        Optional<Goal.ReachWeight> reach,
        Optional<KcalPerKg> perKg,
        Optional<AdviceBand> band) {
    /** A sentence beside the goal. */
    public record Note(String says, Citation source) {}

    private static final double DAYS_A_WEEK = 7;
    private static final Citation MODEL = new Citation("the model of Hall et al., Lancet 2011;378:826-837");

    /** @param total energy a day that holds the weight */
    public static GoalFinding of(Eater eater, Energy total) {
        Body body = eater.body();
        BodyModel model = BodyModel.of(body, total, eater.activity().pal());
        WeeklyChange change = WeeklyChange.of(eater.goal(), model);
        Optional<Goal.ReachWeight> reach = Optional.of(eater.goal())
                .filter(Goal.ReachWeight.class::isInstance)
                .map(Goal.ReachWeight.class::cast);
        double kg = reach.map(goal -> goal.weight().kg() - body.weight().kg()).orElse(0.0);
        return new GoalFinding(
                eater,
                model,
                change,
                reach,
                change.gains() || change.loses() ? KcalPerKg.of(body, kg) : Optional.empty(),
                AdviceBand.of(change, body, eater.experience()));
    }

    /** What holds the weight. */
    public Energy total() {
        return model.total();
    }

    /** The intake of the goal, in whole kcal as it is planned. */
    public Energy intake() {
        return new Energy(Math.round(total().kcal() + change.kcalADay()));
    }

    public boolean isHold() {
        return !change.loses() && !change.gains();
    }

    /** The same goal by the rule of 7700 kcal per kg: for comparison only. */
    public WeeklyChange byRule() {
        return WeeklyChange.byRule(eater.goal(), eater.body());
    }

    /** What the intake does when it is never changed; empty for who holds the weight, and for a weight by a date, which says that itself. */
    public Optional<Held> held() {
        return isHold() || reach.isPresent() ? Optional.empty() : Optional.of(Held.of(eater.body(), model, intake()));
    }

    /** What would hold the weight by a date once it is reached. */
    public Optional<Energy> holdsAfterwards() {
        return reach.filter(goal -> !isHold())
                .map(goal -> model.holding(model.after(goal.weeks() * DAYS_A_WEEK, intake(), model.start())));
    }

    public LossLimit lossLimit() {
        return new LossLimit(model, eater.body());
    }

    /** Whether no intake between a quarter of the total and four times the total does it; then the change is that of the nearest. */
    public boolean isOutOfReach() {
        return change.isOutOfReach(total());
    }

    /** The goal in words. */
    public String says() {
        if (isHold()) {
            return "hold the weight";
        }
        String rate = (change.gains() ? "gain" : "lose") + " about "
                + Numerals.twoDecimals(Math.abs(change.kgAWeek())) + " kg ("
                + Numerals.twoDecimals(Math.abs(change.percentAWeek())) + " %) a week in the next four weeks";
        String kcal = Numerals.signed(change.kcalADay()) + " kcal a day";
        return reach.map(goal -> "reach " + Numerals.plain(goal.weight().kg()) + " kg by " + goal.by() + ", in "
                                + Numerals.oneDecimal(goal.weeks()) + " weeks: " + kcal + " all along, to " + rate
                                + ", "
                                + Numerals.twoDecimals(Math.abs(byRule().kgAWeek())) + " kg on average")
                        .orElse(kcal + ", to " + rate)
                + " (by the rule of " + Numerals.whole(EnergyPerKg.RULE_KCAL) + " kcal per kg: " + saysRule() + ")";
    }

    /** Weeks until the weight is reached, when it is to be reached by a date. */
    public OptionalInt weeksToReach() {
        return reach.map(goal -> OptionalInt.of((int) Math.ceil(goal.weeks()))).orElse(OptionalInt.empty());
    }

    private String saysRule() {
        return eater.goal() instanceof Goal.EnergyADay
                ? Numerals.twoDecimals(Math.abs(byRule().kgAWeek())) + " kg"
                : Numerals.signed(byRule().kcalADay()) + " kcal";
    }

    /** What to know beside the goal: the band of advice; what comes after the first weeks. */
    public List<Note> notes() {
        List<Note> notes = new ArrayList<>();
        band.filter(found -> !eater.training().saysNone())
                .ifPresent(found -> notes.add(
                        new Note("Advised " + found.says(eater.body(), total()) + notSaid(), found.source())));
        held().ifPresent(held -> notes.add(new Note(held.says() + ". " + saysWater(), MODEL)));
        holdsAfterwards().ifPresent(energy -> notes.add(new Note(saysAfterwards(energy), MODEL)));
        return notes;
    }

    private String saysWater() {
        BodyState later = model.after(WeeklyChange.STEP_WEEKS * DAYS_A_WEEK, intake(), model.start());
        return "Of the "
                + Numerals.oneDecimal(Math.abs(later.weightKg() - model.start().weightKg()))
                + " kg of the first four weeks about " + Numerals.oneDecimal(Math.abs(later.waterShiftKg()))
                + " are water. A rate takes a new target every four weeks";
    }

    private String saysAfterwards(Energy holding) {
        return "The same intake all along: weight changes faster at first than at the end. Once there, about "
                + Numerals.tens(holding.kcal())
                + " kcal a day hold it. One person may need less or more: weigh yourself and"
                + " correct";
    }

    private String notSaid() {
        boolean matters = change.gains() && eater.experience().isEmpty();
        return matters ? "; advanced lifters less (the profile does not say the experience)" : "";
    }
}

package batchwright.needs.goal;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
        Energy total,
        WeeklyChange change,
        Optional<Goal.ReachWeight> reach,
        Optional<KcalPerKg> perKg,
        Optional<AdviceBand> band) {
    /** A sentence beside the goal. */
    public record Note(String says, Citation source) {}

    private static final Citation SLOWS =
            new Citation("Hall et al., Lancet 2011;378:826-837: half of a change within about a year");

    /** @param total energy a day that holds the weight */
    public static GoalFinding of(Eater eater, Energy total) {
        Body body = eater.body();
        WeeklyChange change = WeeklyChange.of(eater.goal(), body);
        Optional<Goal.ReachWeight> reach = Optional.of(eater.goal())
                .filter(Goal.ReachWeight.class::isInstance)
                .map(Goal.ReachWeight.class::cast);
        double kg = reach.map(goal -> goal.weight().kg() - body.weight().kg()).orElse(0.0);
        return new GoalFinding(
                eater,
                total,
                change,
                reach,
                change.gains() || change.loses() ? KcalPerKg.of(body, kg) : Optional.empty(),
                AdviceBand.of(change, body, eater.experience()));
    }

    /** The goal in words, with the figure by body composition where that differs from the rule. */
    public String says() {
        if (!change.loses() && !change.gains()) {
            return "hold the weight";
        }
        String rate =
                Words.signed(change.kcalADay()) + " kcal a day, to " + (change.gains() ? "gain" : "lose") + " about "
                        + Words.twoDecimals(Math.abs(change.kgAWeek())) + " kg ("
                        + Words.twoDecimals(Math.abs(change.percentAWeek())) + " %) a week at "
                        + Words.whole(EnergyPerKg.RULE_KCAL) + " kcal per kg";
        return reach.map(this::saysReach).orElse("")
                + rate
                + perKg.filter(KcalPerKg::differs).map(this::saysPerKg).orElse("");
    }

    private String saysReach(Goal.ReachWeight goal) {
        return "reach " + Words.plain(goal.weight().kg()) + " kg by " + goal.by() + ", in "
                + Words.oneDecimal(goal.weeks()) + " weeks: ";
    }

    private String saysPerKg(KcalPerKg found) {
        return reach.isPresent()
                ? "; with this body fat 1 kg of all this may stand for about " + found.says() + ": "
                        + Words.signed(WeeklyChange.kcalADayOf(change.kgAWeek(), found.kcal()))
                        + " kcal a day if needs stayed as they are (Forbes 1987; Hall 2007)"
                : "; with this body fat 1 kg may stand for about " + found.says() + ", so weight may change "
                        + (found.isUnderTheRule() ? "faster" : "more slowly") + " (Forbes 1987; Hall 2008)";
    }

    /** What to know beside the goal: the band of advice; and of a date that change slows. */
    public List<Note> notes() {
        List<Note> notes = new ArrayList<>();
        band.ifPresent(found ->
                notes.add(new Note("Advised " + found.says(eater.body(), total) + notSaid(), found.source())));
        if (reach.isPresent() && band.isPresent()) {
            notes.add(new Note(
                    "Change slows: a body gets used to another intake and needs less or more as its weight changes, so the last"
                            + " weeks bring less than the first, and the day may come later; needs with --weeks "
                            + Words.up(reach.get().weeks()) + " shows how much later. Weigh yourself and correct",
                    SLOWS));
        }
        return notes;
    }

    private String notSaid() {
        boolean matters = change.gains() && eater.experience().isEmpty();
        return matters ? "; advanced lifters less (the profile does not say the experience)" : "";
    }
}

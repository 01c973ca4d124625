package batchwright.needs;

import batchwright.limit.DayTarget;
import batchwright.needs.bodyfat.BodyFatFinding;
import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.intakes.Reference;
import batchwright.needs.intakes.References;
import batchwright.needs.resting.RestingEnergyEquations;
import batchwright.needs.target.EnergyAvailability;
import batchwright.needs.target.Guides;
import batchwright.needs.target.TargetLine;
import batchwright.needs.target.Targets;
import batchwright.needs.total.PalEvidence;
import batchwright.needs.total.TotalRange;
import batchwright.person.Eater;
import batchwright.quantity.Energy;
import java.util.List;
import java.util.Optional;

/**
 * How much an eater needs, with the source of every number.
 *
 * @param eater with an estimate of body fat when the profile asks for one
 * @param bodyFat how body fat came about
 * @param holding what holds body weight
 * @param goal what the goal means; empty when a caution stops planning
 * @param targets what each day must hold; empty exactly when a caution stops planning
 */
public record Needs(
        Eater eater,
        BodyFatFinding bodyFat,
        TotalEnergy holding,
        Optional<GoalFinding> goal,
        Optional<Targets> targets,
        List<Caution> cautions) {
    public Needs {
        cautions = List.copyOf(cautions);
    }

    /** Every published equation that can be worked out, the one in use first and marked. */
    public List<Estimate> resting() {
        return holding.resting();
    }

    /** Energy a day that holds body weight. */
    public Energy total() {
        return holding.aDay();
    }

    public Citation totalSource() {
        return holding.source();
    }

    /** The total from equations that need no resting energy. */
    public List<Estimate> secondOpinions() {
        return holding.secondOpinions();
    }

    /** Surplus (positive) or deficit (negative) a day; 0 when a caution stops planning. */
    public double goalKcal() {
        return goal.map(finding -> finding.change().kcalADay()).orElse(0.0);
    }

    /** The goal in words, with the weight change a week that it means. */
    public String goalSays() {
        return goal.map(GoalFinding::says)
                .orElse("not worked out, because planning stops here; the total holds the weight");
    }

    /** What each day must hold; empty exactly when a caution stops planning. */
    public Optional<DayTarget> target() {
        return targets.map(Targets::day);
    }

    /** The target line by line with its sources; empty when the target is. */
    public List<TargetLine> lines() {
        return targets.map(Targets::lines).orElse(List.of());
    }

    public boolean stopsPlanning() {
        return cautions.stream().anyMatch(Caution::stopsPlanning);
    }

    /** Whether nobody should be shown any of these figures, because they could do harm or would be wrong. */
    public boolean hidesFigures() {
        return cautions.stream().anyMatch(Caution::hidesFigures);
    }

    /** Energy left for the body when the target is eaten; empty when there is no target or body fat is not known. */
    public Optional<EnergyAvailability> energyAvailability() {
        return target().flatMap(day -> EnergyAvailability.of(eater, total(), new Energy(day.energyAimKcal())));
    }

    /** Published figures beside the target that are no rules of a plan; empty when the target is. */
    public Optional<Guides> guides() {
        return target().map(day -> Guides.of(eater, day, goalKcal()));
    }

    /** What a day's nutrients are compared with, each once; empty when the target is. */
    public List<Reference> references() {
        return target().map(day -> References.of(eater, day, Guides.of(eater, day, goalKcal())))
                .orElse(List.of());
    }

    /** The equation that the total is built on. */
    public Estimate restingInUse() {
        return resting().get(0);
    }

    /** How sure the PAL is. */
    public PalEvidence palEvidence() {
        return PalEvidence.of(eater.activity());
    }

    /** Where the total of 8 people in 10 of this description lies. */
    public TotalRange totalRange() {
        return TotalRange.of(restingInUse().perDay(), RestingEnergyEquations.spreadKcal(eater.body()), palEvidence());
    }

    /** How far the resting energy in use moves when body fat is one percentage point higher [kcal/d]. */
    public double restingKcalPerFatPoint() {
        return RestingEnergyEquations.kcalOfFatPoints(eater.body(), 1);
    }
}

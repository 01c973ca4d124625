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
 * @param resting every published equation that can be worked out, the one in use first and marked
 * @param total energy a day that holds body weight: resting energy x PAL
 * @param secondOpinions the same from equations that need no resting energy
 * @param goalKcal surplus (positive) or deficit (negative) a day; 0 when a caution stops planning
 * @param goalSays the goal in words, with the weight change a week that it means
 * @param goal what the goal means; empty when a caution stops planning
 * @param target what each day must hold; empty exactly when a caution stops planning
 * @param lines the target line by line with its sources; empty when the target is
 */
public record Needs(
        Eater eater,
        BodyFatFinding bodyFat,
        List<Estimate> resting,
        Energy total,
        Citation totalSource,
        List<Estimate> secondOpinions,
        double goalKcal,
        String goalSays,
        Optional<GoalFinding> goal,
        Optional<DayTarget> target,
        List<TargetLine> lines,
        List<Caution> cautions) {
    public boolean stopsPlanning() {
        return cautions.stream().anyMatch(Caution::stopsPlanning);
    }

    /** Whether nobody should be shown any of these figures, because they could do harm or would be wrong. */
    public boolean hidesFigures() {
        return cautions.stream().anyMatch(Caution::hidesFigures);
    }

    /** Energy left for the body when the target is eaten; empty when there is no target or body fat is not known. */
    public Optional<EnergyAvailability> energyAvailability() {
        return target.flatMap(day -> EnergyAvailability.of(eater, total, new Energy(day.energyAimKcal())));
    }

    /** Published figures beside the target that are no rules of a plan; empty when the target is. */
    public Optional<Guides> guides() {
        return target.map(day -> Guides.of(eater, day, goalKcal));
    }

    /** What a day's nutrients are compared with, each once; empty when the target is. */
    public List<Reference> references() {
        return target.map(day -> References.of(eater, day, Guides.of(eater, day, goalKcal)))
                .orElse(List.of());
    }

    /** The equation that the total is built on. */
    public Estimate restingInUse() {
        return resting.get(0);
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

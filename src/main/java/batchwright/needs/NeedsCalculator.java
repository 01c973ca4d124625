package batchwright.needs;

import batchwright.needs.bodyfat.BodyFatFinding;
import batchwright.needs.caution.AnswerCautions;
import batchwright.needs.caution.BodyFatCautions;
import batchwright.needs.caution.CappedCaution;
import batchwright.needs.caution.Caution;
import batchwright.needs.caution.GoalCautions;
import batchwright.needs.caution.HealthCautions;
import batchwright.needs.caution.TargetCautions;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.CappedGoal;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.resting.RestingEnergyEquations;
import batchwright.needs.target.Targets;
import batchwright.needs.total.SecondOpinions;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.PalFromWeighings;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From an eater to needs. When a caution stops planning, only what holds the weight is worked out: no goal, no target. When one
 * hides figures, it stands alone with those that stop planning too.
 */
public final class NeedsCalculator {
    private static final Caution ESTIMATE_ONLY = Caution.warn(
            "estimate_only",
            "These are estimates and no medical advice. For one person they are right to about 10 %, and 20-30 people in 100 are"
                    + " further off. Weight moves by water at first, and a body gets used to a change. Weigh yourself for some weeks and"
                    + " correct; if you are ill or take medicine, ask a doctor or dietitian first.",
            new Citation("Mifflin et al. 1990, St Jeor et al. 2004; Hall 2008"));

    private NeedsCalculator() {}

    /**
     * With what an eater's own weighings came to, in place of the activity that the profile says.
     *
     * @param holds energy a day that holds the weight
     */
    public static Needs needsOf(Eater asWritten, Energy holds) {
        return needsOf(holding(asWritten, holds));
    }

    /** The eater with the activity that makes this energy hold the weight. */
    public static Eater holding(Eater asWritten, Energy holds) {
        Body body = BodyFatFinding.of(asWritten.body()).body();
        double resting = RestingEnergyEquations.estimates(body).get(0).perDay().kcal();
        return asWritten.withActivity(new PalFromWeighings(holds.kcal() / resting));
    }

    public static Needs needsOf(Eater asWritten) {
        BodyFatFinding bodyFat = BodyFatFinding.of(asWritten.body());
        Body body = bodyFat.body();
        double pal = asWritten.activity().pal();
        List<Estimate> resting = RestingEnergyEquations.estimates(body);
        Estimate inUse = resting.get(0);
        Energy total = inUse.perDay().times(pal);
        CappedGoal capped = CappedGoal.of(asWritten.withBody(body), total);
        Eater eater = capped.eater();
        GoalFinding goal = GoalFinding.of(eater, total);
        Targets targets = Targets.of(eater, total, goal.change());

        List<Caution> cautions = new ArrayList<>(HealthCautions.of(eater));
        cautions.addAll(AnswerCautions.of(goal, targets));
        cautions.addAll(BodyFatCautions.impossible(bodyFat));
        List<Caution> ofGoal = GoalCautions.of(goal, targets);
        if (stops(cautions) || hides(ofGoal)) {
            ofGoal.stream().filter(Caution::hidesFigures).forEach(cautions::add);
        } else if (stops(ofGoal)) {
            cautions.addAll(ofGoal);
        } else {
            CappedCaution.of(capped, goal.change()).ifPresent(cautions::add);
            cautions.addAll(ofGoal);
            cautions.addAll(TargetCautions.of(eater, targets));
        }
        if (hides(cautions)) {
            cautions.removeIf(caution -> !caution.stopsPlanning());
        } else {
            cautions.addAll(BodyFatCautions.mild(bodyFat));
            cautions.add(ESTIMATE_ONLY);
        }
        boolean stops = stops(cautions);
        return new Needs(
                eater,
                bodyFat,
                new TotalEnergy(
                        resting,
                        total,
                        new Citation(inUse.equation() + " x PAL " + Numerals.pal(pal)
                                + "; method: FAO/WHO/UNU, Human energy requirements, 2004"),
                        SecondOpinions.of(body, pal)),
                Optional.of(goal).filter(g -> !stops),
                Optional.of(targets).filter(t -> !stops),
                cautions);
    }

    private static boolean hides(List<Caution> cautions) {
        return cautions.stream().anyMatch(Caution::hidesFigures);
    }

    private static boolean stops(List<Caution> cautions) {
        return cautions.stream().anyMatch(Caution::stopsPlanning);
    }
}

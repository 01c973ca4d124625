package batchwright.needs.projection;

import batchwright.needs.bodyfat.BodyFatEstimate;
import batchwright.needs.caution.Caution;
import batchwright.needs.dynamics.Course;
import batchwright.needs.dynamics.StartingFat;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to know before trusting a projection: first where it stops, last for whom it was made. */
final class ProjectionCautions {
    static final String STOPS = "projection_stops";

    private static final double WORTH_SAYING_KG = 0.1;
    private static final Citation LIMITS =
            Citation.designChoice("BMI and body fat where a loss has to end; the model was not made for leaner bodies");
    private static final Citation MODEL =
            new Citation("Hall et al., Lancet 2011;378:826-837; Guo, Brager and Hall 2018 on CALERIE 2");
    private static final Citation LEAN =
            new Citation("shared out after Forbes 1987; Hall, Br J Nutr 2007;97:1059-1063");
    private static final Citation APPETITE = new Citation("Polidori et al. 2016");

    private ProjectionCautions() {}

    static List<Caution> of(Body body, StartingFat fat, Course likely, Course lightest) {
        List<Caution> cautions = new ArrayList<>();
        likely.stopped().ifPresent(why -> cautions.add(stops(likely, why)));
        if (lightest.lastWeek() < likely.lastWeek()) {
            lightest.stopped().ifPresent(why -> cautions.add(lowEndStops(lightest, why)));
        }
        cautions.add(model());
        if (loses(likely)) {
            cautions.add(appetite());
        }
        cautions.add(lean());
        fat.estimate().ifPresent(estimate -> cautions.add(fatEstimated(estimate, body)));
        return List.copyOf(cautions);
    }

    private static boolean loses(Course likely) {
        double change = likely.weeks().get(likely.lastWeek()).weightKg()
                - likely.weeks().get(0).weightKg();
        return change < -WORTH_SAYING_KG;
    }

    private static Caution stops(Course course, String why) {
        return Caution.warn(
                STOPS,
                (course.lastWeek() == 0
                                ? "Nothing is projected, because in week 1 "
                                : "The projection stops after week " + course.lastWeek() + ", because in week "
                                        + (course.lastWeek() + 1) + " ")
                        + why
                        + ". Do not follow this target for so long; so lean a body is at risk. A doctor"
                        + " or dietitian can help to choose a goal.",
                LIMITS);
    }

    private static Caution lowEndStops(Course course, String why) {
        return Caution.warn(
                "projection_low_end_stops",
                "From week " + (course.lastWeek() + 1) + " on the lightest weight is left out, because " + why
                        + ". Should your weight fall as fast as that, eat more and ask a doctor or dietitian.",
                LIMITS);
    }

    private static Caution model() {
        return Caution.warn(
                "projection_is_a_model",
                "This is a model of many people. For a group it was right to 0.5 kg over two years; one person may end outside"
                        + " the range. It takes every day as planned and activity as it is. Water moves first: the scale can jump by"
                        + " 1 to 2 kg in the first two weeks or after salty days. Compare weekly averages, and correct what you eat by"
                        + " them.",
                MODEL);
    }

    private static Caution appetite() {
        return Caution.warn(
                "appetite_grows",
                "Appetite grows with each kg lost, by about 100 kcal a day on average, so weight is often lost more slowly than"
                        + " this.",
                APPETITE);
    }

    private static Caution lean() {
        return Caution.warn(
                "lean_mass_is_not_muscle",
                "Lean mass is all that is not fat: water, organs, bone, muscle. The model does not know training or protein, and"
                        + " promises no muscle. Who lifts and eats enough protein usually keeps more lean mass in a deficit than it says.",
                LEAN);
    }

    private static Caution fatEstimated(BodyFatEstimate estimate, Body body) {
        double kg = estimate.errorPoints() / 100 * body.weight().kg();
        String doubt = Optional.of(String.join("; ", estimate.caveats()))
                .filter(text -> !text.isEmpty())
                .map(text -> " (" + text + ")")
                .orElse("");
        return Caution.warn(
                "body_fat_estimated",
                "Body fat was not measured. It starts from "
                        + Numerals.oneDecimal(estimate.fat().percent())
                        + " % by " + estimate.method() + doubt + ", give or take "
                        + Numerals.oneDecimal(estimate.errorPoints()) + " points or " + Numerals.oneDecimal(kg)
                        + " kg; fat and lean mass are no surer than that.",
                estimate.source());
    }
}

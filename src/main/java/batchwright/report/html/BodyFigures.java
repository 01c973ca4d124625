package batchwright.report.html;

import batchwright.needs.Needs;
import batchwright.needs.intakes.Intake;
import java.util.List;
import java.util.Optional;

/** What days do to the body: nutrients, and weight where the profile allows a projection. */
public record BodyFigures(NutrientsFigure nutrients, Optional<WeightFigure> weight) {
    static BodyFigures of(Needs needs, List<Intake> intakes) {
        return new BodyFigures(NutrientsFigure.of(intakes), WeightFigure.of(needs));
    }
}

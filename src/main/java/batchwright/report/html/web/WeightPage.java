package batchwright.report.html.web;

import batchwright.needs.caution.Caution;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetAdvice;
import batchwright.report.html.LearnedFigures;
import batchwright.report.html.part.Figure;
import batchwright.report.needs.LearnedWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the weighings of an eater say, and what is offered for it.
 *
 * @param says sentences above the pictures
 * @param offer whether there is a step to take
 * @param cautions below
 */
public record WeightPage(
        Frame frame, String id, List<String> says, boolean offer, List<Figure> figures, List<String> cautions) {
    /** @param learned empty when nothing was weighed, or when no figures are shown to this eater */
    public static WeightPage of(Frame frame, String id, Optional<Learned> learned) {
        if (learned.isEmpty()) {
            return new WeightPage(
                    frame, id, List.of("There is nothing to show of weighings yet."), false, List.of(), List.of());
        }
        Learned known = learned.get();
        List<String> says = new ArrayList<>();
        List<Caution> told = new ArrayList<>(known.told());
        if (known.advice() instanceof TargetAdvice.Stop stop) {
            told.addAll(0, stop.why());
        }
        if (!known.hidesFigures()) {
            says.add(LearnedWords.evidence(known.seen()));
            says.addAll(LearnedWords.figures(known.seen()));
            says.addAll(LearnedWords.advice(known.advice()));
        }
        return new WeightPage(
                frame,
                id,
                says,
                known.advice() instanceof TargetAdvice.Offer,
                LearnedFigures.of(known),
                told.stream().map(Caution::text).toList());
    }
}

package batchwright.report.why;

import batchwright.answer.PlanAnswer;
import batchwright.explain.KnownCost;
import batchwright.explain.cost.Frontier;
import batchwright.food.Nutrient;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one level of protein costs.
 *
 * @param level of every day [g]; where several eat, how much more each has
 * @param cost of the cheapest plan, as text
 * @param known the same as figures
 * @param inForce whether this is the plan that was asked for
 * @param gramsPerKg floor of each eater there, by the name that the question has; rounds up to the same whole grams
 */
public record ProteinStep(String level, String cost, KnownCost known, boolean inForce, Map<String, Double> gramsPerKg) {
    private static final double THOUSAND = 1000;

    public ProteinStep {
        gramsPerKg = Map.copyOf(gramsPerKg);
    }

    /** From the lowest level to the highest. */
    public static List<ProteinStep> all(Frontier frontier, PlanAnswer answer) {
        var words = new ProteinWords(answer);
        return frontier.points().stream()
                .map(point -> new ProteinStep(
                        words.level(point.change()),
                        FrontierText.cost(point.cost(), answer.kitchen().currency()),
                        point.cost(),
                        point.inForce(),
                        gramsPerKg(answer, point.change())))
                .toList();
    }

    private static Map<String, Double> gramsPerKg(PlanAnswer answer, int change) {
        Map<String, Double> floors = new TreeMap<>();
        for (int k = 0; k < answer.asked().named().size(); k++) {
            double kg = answer.needs().get(k).eater().body().weight().kg();
            Optional<Integer> floor = answer.needs()
                    .get(k)
                    .target()
                    .map(target -> target.day(Nutrient.PROTEIN).least() + change);
            String name = answer.asked().named().get(k);
            floor.ifPresent(grams -> floors.put(name, Math.floor(grams / kg * THOUSAND) / THOUSAND));
        }
        return floors;
    }
}

package batchwright.report.html.web;

import batchwright.answer.PlanAnswer;
import batchwright.explain.cost.Why;
import batchwright.quantity.Money;
import batchwright.report.html.chart.LevelsChart;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.why.ProteinStep;
import batchwright.report.why.WhySentences;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What was found out beside a plan.
 *
 * @param protein cost against protein; empty when nobody asked
 * @param points levels of protein that have a plan, to be picked
 * @param why one list of sentences below each heading; empty when nobody asked
 */
public record DeskInsight(Optional<Figure> protein, List<Pick> points, List<Because> why) {
    /**
     * @param sets fields of the page and what they become, such as {@code protein-anna=1.8}, apart by blanks
     */
    public record Pick(String says, String sets, boolean inForce) {}

    public record Because(String heading, List<String> sentences) {}

    public static DeskInsight of(PlanAnswer answer) {
        List<ProteinStep> steps = answer.insight()
                .frontier()
                .map(frontier -> ProteinStep.all(frontier, answer))
                .orElse(List.of());
        String currency = answer.kitchen().currency().toString();
        return new DeskInsight(
                answer.insight().frontier().map(frontier -> figure(steps, answer)),
                steps.stream()
                        .filter(step -> step.known().most().isPresent())
                        .map(step -> new Pick(
                                step.level() + " g: " + step.cost() + " " + currency
                                        + (step.inForce() ? ", as shown" : ""),
                                sets(step.gramsPerKg()),
                                step.inForce()))
                        .toList(),
                answer.insight().why().map(why -> because(why, answer)).orElse(List.of()));
    }

    private static String sets(Map<String, Double> gramsPerKg) {
        return new TreeMap<>(gramsPerKg)
                .entrySet().stream()
                        .map(entry -> "protein-" + entry.getKey() + "="
                                + BigDecimal.valueOf(entry.getValue())
                                        .stripTrailingZeros()
                                        .toPlainString())
                        .collect(Collectors.joining(" "));
    }

    private static Figure figure(List<ProteinStep> steps, PlanAnswer answer) {
        boolean several = answer.needs().size() > 1;
        String unit = several ? "g of protein a day, more or less for each" : "g of protein, least of every day";
        var table = new Table("Cost of each level of protein")
                .numbers(unit)
                .numbers("cost, " + answer.kitchen().currency());
        steps.forEach(step -> table.rowLike(
                step.inForce() ? "total" : "row", step.level() + (step.inForce() ? " (now)" : ""), step.cost()));
        List<LevelsChart.Level> levels = new ArrayList<>();
        for (ProteinStep step : steps) {
            levels.add(new LevelsChart.Level(
                    step.level(),
                    step.known().least().minor(),
                    step.known().most().stream().mapToDouble(Money::minor).findFirst(),
                    step.inForce()));
        }
        String says = says(steps, answer);
        return new Figure(
                "levels",
                "Cost against protein",
                says,
                levels.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new LevelsChart(unit, answer.kitchen().currency(), levels).draw(says)),
                Optional.of(table));
    }

    private static String says(List<ProteinStep> steps, PlanAnswer answer) {
        List<ProteinStep> planned =
                steps.stream().filter(step -> step.known().most().isPresent()).toList();
        if (planned.isEmpty()) {
            return "Not known: time ended before any plan was found.";
        }
        ProteinStep first = planned.get(0);
        ProteinStep last = planned.get(planned.size() - 1);
        String open = planned.stream().allMatch(step -> step.known().proven())
                ? ""
                : " Sums with <= may be lower: time ended before the proof.";
        return "From " + first.level() + " to " + last.level() + " g a day the cheapest plan goes from " + first.cost()
                + " to " + last.cost() + " " + answer.kitchen().currency() + "." + open;
    }

    private static List<Because> because(Why why, PlanAnswer answer) {
        var words = new WhySentences(why, answer);
        List<String> rules = new ArrayList<>(words.rules());
        rules.add(words.protein());
        return List.of(
                new Because("What each limit costs, moved alone", rules),
                new Because("Foods that just missed", words.misses()));
    }
}

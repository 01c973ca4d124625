package batchwright.report.html;

import batchwright.food.Dish;
import batchwright.report.html.part.PageHead;
import batchwright.report.labels.ContainerLabel;
import batchwright.report.labels.LabelFit;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A label for each container: cards on a screen, sheets in a grid on paper. */
public record LabelsPage(PageHead head, List<List<LabelCard>> sheets) {
    static LabelsPage of(PlanPage page) {
        LabelSheet sheet = page.style().labels();
        List<LabelCard> labels = labels(page);
        List<List<LabelCard>> sheets = new ArrayList<>();
        for (int from = 0; from < labels.size(); from += sheet.labels()) {
            sheets.add(labels.subList(from, Math.min(labels.size(), from + sheet.labels())));
        }
        return new LabelsPage(page.head("labels", "Labels", says(page, sheet)), sheets);
    }

    private static String says(PlanPage page, LabelSheet sheet) {
        return "One for each of " + page.containers() + " containers. On paper: "
                + sheet.paper().label() + ", "
                + sheet.columns() + " by " + sheet.rows() + " labels of "
                + sheet.labelWidthMm().toPlainString()
                + " × " + sheet.labelHeightMm().toPlainString()
                + " mm; print at 100 %, without margins or fitting to the page. Figures are "
                + page.style().rounding().rules().says() + "; energy and grams of the plan are not.";
    }

    /** Those of a dish in letters of one size. */
    private static List<LabelCard> labels(PlanPage page) {
        List<ContainerLabel> labels = ContainerLabel.of(page.plan());
        Map<Dish, Double> smallest = new LinkedHashMap<>();
        labels.forEach(l -> smallest.merge(l.dish(), fit(page, l).points(), Math::min));
        return labels.stream()
                .map(l -> new LabelCard(words(page, l), fit(page, l).atMost(smallest.getOrDefault(l.dish(), 0.0))))
                .toList();
    }

    private static LabelWords words(PlanPage page, ContainerLabel label) {
        return new LabelWords(
                label, page.style().rounding().rules(), page.answer().kitchen().cookingDay(), page.firstDay());
    }

    private static LabelFit fit(PlanPage page, ContainerLabel label) {
        return LabelFit.of(page.style().labels(), label.dish().name(), label.eater(), words(page, label));
    }
}

package batchwright.report.html;

import batchwright.food.Dish;
import batchwright.report.labels.ContainerLabel;
import batchwright.report.labels.LabelCss;
import batchwright.report.labels.LabelFit;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A label for each container: cards on a screen, sheets in a grid on paper. */
final class LabelsPage {
    private final PlanPage page;

    LabelsPage(PlanPage page) {
        this.page = page;
    }

    void write(Html html) {
        LabelSheet sheet = page.style().labels();
        page.open(
                html,
                "labels",
                "Labels",
                "One for each of " + page.containers() + " containers. On paper: "
                        + sheet.paper().label() + ", "
                        + sheet.columns() + " by " + sheet.rows() + " labels of "
                        + sheet.labelWidthMm().toPlainString()
                        + " × " + sheet.labelHeightMm().toPlainString()
                        + " mm; print at 100 %, without margins or fitting to the page. Figures are "
                        + page.style().rounding().rules().says() + "; energy and grams of the plan are not.");
        List<ContainerLabel> labels = ContainerLabel.of(page.plan());
        Map<Dish, Double> smallest = new LinkedHashMap<>();
        labels.forEach(l -> smallest.merge(l.dish(), fit(l).points(), Math::min));
        for (int from = 0; from < labels.size(); from += sheet.labels()) {
            html.open("div", "class", "sheet").line();
            labels.subList(from, Math.min(labels.size(), from + sheet.labels()))
                    .forEach(l -> label(html, l, fit(l).atMost(smallest.getOrDefault(l.dish(), 0.0))));
            html.close().line();
        }
        html.close().line();
    }

    private LabelWords words(ContainerLabel label) {
        return new LabelWords(
                label, page.style().rounding().rules(), page.answer().kitchen().cookingDay(), page.firstDay());
    }

    private LabelFit fit(ContainerLabel label) {
        return LabelFit.of(page.style().labels(), label.dish().name(), label.eater(), words(label));
    }

    private void label(Html html, ContainerLabel label, LabelFit fit) {
        LabelWords words = words(label);
        html.open("div", "class", "label " + LabelCss.type(fit.points()));
        html.open("p", "class", "dishname").name(fit.name()).close();
        html.open("p", "class", "for")
                .name(fit.eater())
                .text(", " + words.number())
                .close();
        html.element("p", words.figures());
        html.element("p", "Allergens: " + words.allergens(), "class", "allergens");
        html.open("p")
                .text(words.cooked())
                .element("strong", words.by())
                .text(words.then())
                .close();
        html.element("p", "Reheat: " + fit.reheat());
        html.close().line();
    }
}

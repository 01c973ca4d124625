package batchwright.report.html;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.report.html.part.PageHead;
import java.util.List;

/** What holds for all days of several sessions. */
public record WholeSection(PageHead head, List<EaterBody> eaters, CautionsSection cautions) {
    public record EaterBody(String name, BodyFigures body) {}

    static WholeSection of(PlanAnswer answer) {
        return new WholeSection(
                new PageHead("all", "plan", "All sessions", "", "", ""),
                answer.needs().stream()
                        .map(needs -> new EaterBody(needs.eater().name(), BodyFigures.of(needs, answer.intakes(needs))))
                        .toList(),
                CautionsSection.of(Notice.of(answer), answer.needs().size()));
    }
}

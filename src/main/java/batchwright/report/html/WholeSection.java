package batchwright.report.html;

import batchwright.report.html.part.PageHead;
import batchwright.report.plan.SessionsAnswer;
import java.util.List;

/** What holds for all days of several sessions. */
public record WholeSection(PageHead head, List<EaterBody> eaters, CautionsSection cautions) {
    public record EaterBody(String name, BodyFigures body) {}

    static WholeSection of(SessionsAnswer answer) {
        return new WholeSection(
                new PageHead("all", "plan", "All sessions", "", "", ""),
                answer.whole().needs().stream()
                        .map(needs -> new EaterBody(needs.eater().name(), BodyFigures.of(needs, answer.intakes(needs))))
                        .toList(),
                CautionsSection.of(answer.notices(), answer.whole().needs().size()));
    }
}

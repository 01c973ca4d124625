package batchwright.report.html;

import batchwright.plan.Batch;
import batchwright.report.cooking.Work;
import batchwright.report.html.part.PageHead;
import batchwright.report.print.Show;
import java.util.List;
import java.util.stream.Stream;

/** The cooking sheet: the evening before, the order of work, then each dish. */
public record CookingPage(
        PageHead head, List<Task> evening, TimeLine work, List<DishSheet> dishes, List<String> notes) {
    private static final String COOL =
            "Cool in shallow containers and have all of it in the fridge within 2 hours. Local food-safety advice goes first; the"
                    + " cautions of the plan tell more.";

    /** What a dish needs the evening before. */
    public record Task(String text, String dish) {}

    static CookingPage of(PlanPage page) {
        List<Batch> batches = page.plan().batches();
        String says = Show.count(batches.size(), "dish", "dishes") + ", "
                + Show.count(page.containers(), "container", "containers") + ".";
        return new CookingPage(
                page.head("cook", "Cooking sheet", says),
                batches.stream()
                        .flatMap(batch -> Work.dayBefore(batch).stream()
                                .map(step -> new Task(step, batch.dish().name())))
                        .toList(),
                TimeLine.of(page),
                batches.stream().map(batch -> DishSheet.of(page, batch)).toList(),
                Stream.concat(Work.note(batches.stream().map(Batch::dish).toList()).stream(), Stream.of(COOL))
                        .toList());
    }
}

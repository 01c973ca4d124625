package batchwright.page;

import batchwright.answer.PlanAnswer;
import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Workspace;
import batchwright.app.book.KeepPlan;
import batchwright.plan.Watch;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.plan.PlanJson;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A kitchen in which a plan was kept for {@link OpenedPage#DAY}: three days, one dish, one eater. */
final class KeptKitchen {
    static final String DISH = "chickpea_tagine";
    static final String EATER = "parent-holding";

    private KeptKitchen() {}

    static OpenedPage open(Path folder) throws IOException {
        keep(OpenedPage.smallKitchen(folder), DISH, OpenedPage.DAY);
        return new OpenedPage(folder).enter();
    }

    static void keep(Path folder, String dish, LocalDate day) {
        Workspace workspace = Workspace.open(Optional.of(folder), folder, day, note -> {});
        var question = new PlanQuestion(
                List.of(EATER),
                3,
                Optional.empty(),
                new CookingWanted(DishesWanted.only(List.of(dish)), DishNumber.atMost(1)),
                List.of(),
                new PlanQuestion.HowLong(Duration.ofSeconds(60)),
                InsightWanted.NONE);
        PlanAnswer answer = new MakePlan().answer(workspace, question, Watch.NONE, request -> {});
        new KeepPlan(workspace).keep(day, PlanJson.of(answer, KitchenClock.FROM_ZERO));
    }
}

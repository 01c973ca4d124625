package batchwright.cli.book;

import batchwright.answer.EatenFirst;
import batchwright.answer.PlanAnswer;
import batchwright.answer.RestOfPlan;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.plan.EatenFirstJson;
import batchwright.report.plan.EatenFirstText;
import batchwright.report.plan.RestOfPlanJson;
import batchwright.report.plan.RestOfPlanText;
import batchwright.report.print.Commands;

/** What an answer says of the containers that were there before the plan. */
public interface Before {
    /** In front of the plan. */
    String text(PlanAnswer answer, int width);

    /** The whole answer. */
    String json(PlanAnswer answer, KitchenClock clock);

    /** Whole days that come before the plan. */
    static Before of(EatenFirst first, Commands commands) {
        return new Before() {
            @Override
            public String text(PlanAnswer answer, int width) {
                String days = answer.plan().isPresent() ? "" : EatenFirstText.daysCount(first);
                return EatenFirstText.of(first, commands, width) + days;
            }

            @Override
            public String json(PlanAnswer answer, KitchenClock clock) {
                return EatenFirstJson.of(first, answer, clock);
            }
        };
    }

    /** Containers that are part of the plan. */
    static Before of(RestOfPlan rest) {
        return new Before() {
            @Override
            public String text(PlanAnswer answer, int width) {
                return RestOfPlanText.of(rest, answer.plan(), width);
            }

            @Override
            public String json(PlanAnswer answer, KitchenClock clock) {
                return RestOfPlanJson.of(rest, answer, clock);
            }
        };
    }
}

package batchwright.report.html.web;

import batchwright.answer.EatenFirst;
import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.food.Nutrient;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.html.CautionsSection;
import batchwright.report.html.PlanReport;
import batchwright.report.html.ReportStyle;
import batchwright.report.html.part.Table;
import batchwright.report.plan.NoPlanWords;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a search came to, as the desk shows it.
 *
 * @param says the answer in a sentence or two
 * @param report pictures and tables; empty when there is no plan
 * @param changes what is not as it was in the plan before; empty when nothing is, or there was none
 * @param why reasons why there is no plan, below their headings
 * @param cautions when one of them stops planning
 * @param insight what was found out beside the plan; empty when there is none
 */
public record DeskAnswer(
        List<String> says,
        Optional<PlanReport> report,
        Optional<Table> changes,
        List<NoPlanWords.Section> why,
        Optional<CautionsSection> cautions,
        Optional<DeskInsight> insight) {
    /** It could not be worked out. */
    public static DeskAnswer refused(String why) {
        return without(List.of(why), List.of(), Optional.empty());
    }

    /** Nothing needs to be cooked. */
    public static DeskAnswer nothingToCook(EatenFirst first) {
        return without(
                List.of(left(first), "Nothing needs to be cooked: what is left lasts for all days that are asked for."),
                List.of(),
                Optional.empty());
    }

    /** There is no plan to show. */
    private static DeskAnswer without(
            List<String> says, List<NoPlanWords.Section> why, Optional<CautionsSection> cautions) {
        return new DeskAnswer(says, Optional.empty(), Optional.empty(), why, cautions, Optional.empty());
    }

    /** @param before the plan that was shown before, if there was one */
    public static DeskAnswer of(EatenFirst first, PlanAnswer answer, Optional<PlanAnswer> before, ReportStyle style) {
        List<String> says = new ArrayList<>();
        if (first.days() > 0) {
            says.add(left(first));
        }
        return answer.plan()
                .map(plan -> planned(says, answer, plan, before, style))
                .orElseGet(() -> none(says, answer));
    }

    private static String left(EatenFirst first) {
        return "Eat first: what is left makes " + Show.count(first.days(), "whole day", "whole days")
                + ". The plan begins after them, on " + Dates.shortly(first.next()) + ".";
    }

    private static DeskAnswer planned(
            List<String> says, PlanAnswer answer, Plan plan, Optional<PlanAnswer> before, ReportStyle style) {
        return new DeskAnswer(
                says,
                Optional.of(PlanReport.of(answer, plan, style)),
                before.flatMap(earlier -> changes(earlier, answer)),
                List.of(),
                Optional.empty(),
                Optional.of(DeskInsight.of(answer)));
    }

    private static DeskAnswer none(List<String> says, PlanAnswer answer) {
        if (answer.stoppedByCaution()) {
            says.add("A caution stops planning.");
            return without(
                    says,
                    List.of(),
                    Optional.of(
                            CautionsSection.of(Notice.of(answer), answer.needs().size())));
        }
        var words = new NoPlanWords(answer);
        boolean proven = answer.status() == PlanAnswer.Status.NO_PLAN;
        says.add(
                proven
                        ? "No plan keeps every rule."
                        : "No plan was found in the time given, and no proof that there is none.");
        (proven ? words.stuck() : words.overBudget()).ifPresent(says::add);
        return without(says, proven && !answer.clashes().isEmpty() ? words.sections() : List.of(), Optional.empty());
    }

    /** Two columns of only what changed. */
    private static Optional<Table> changes(PlanAnswer before, PlanAnswer now) {
        if (before.plan().isEmpty()) {
            return Optional.empty();
        }
        var table = new Table("Before and now").words("what").words("before").words("now");
        List<String[]> rows = new ArrayList<>();
        row(rows, "Cost", cost(before), cost(now));
        row(rows, "Days", Integer.toString(before.days()), Integer.toString(now.days()));
        row(rows, "Dishes", dishes(before), dishes(now));
        row(rows, "Boxes", Integer.toString(boxes(before)), Integer.toString(boxes(now)));
        row(rows, "Time to cook", minutes(before), minutes(now));
        row(rows, "Energy a day", average(before, Nutrient.ENERGY), average(now, Nutrient.ENERGY));
        row(rows, "Protein a day", average(before, Nutrient.PROTEIN), average(now, Nutrient.PROTEIN));
        rows.forEach(table::row);
        return rows.isEmpty() ? Optional.empty() : Optional.of(table);
    }

    private static void row(List<String[]> rows, String what, String before, String now) {
        if (!Objects.equals(before, now)) {
            rows.add(new String[] {what, before, now});
        }
    }

    private static Plan plan(PlanAnswer answer) {
        return answer.plan().orElseThrow();
    }

    private static String cost(PlanAnswer answer) {
        return Show.money(plan(answer).cost(), answer.kitchen().currency());
    }

    private static String dishes(PlanAnswer answer) {
        return plan(answer).batches().stream()
                .map(batch -> batch.dish().name())
                .distinct()
                .sorted()
                .collect(Collectors.joining("; "));
    }

    private static int boxes(PlanAnswer answer) {
        return plan(answer).batches().stream().mapToInt(Batch::containers).sum();
    }

    private static String minutes(PlanAnswer answer) {
        return answer.sessions().stream()
                .flatMap(session -> session.schedule().stream())
                .map(schedule -> ScheduleWords.duration(schedule.minutes()))
                .collect(Collectors.joining(" + "));
    }

    private static String average(PlanAnswer answer, Nutrient nutrient) {
        return answer.needs().stream()
                .flatMap(needs -> plan(answer).averageDay(needs.eater()).stream()
                        .map(day -> Show.whole(day.get(nutrient)) + " " + nutrient.unit()))
                .collect(Collectors.joining(" and "));
    }
}

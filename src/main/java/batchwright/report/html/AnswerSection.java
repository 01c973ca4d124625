package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.person.Eater;
import batchwright.plan.Plan;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.cooking.Work;
import batchwright.report.html.part.Tile;
import batchwright.report.html.part.WayThrough;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * The answer first: what it costs, how sure that is, and whether every day holds what it must.
 *
 * @param dishes what is cooked, with the number of containers
 * @param hits one for each eater
 * @param shopOnce whether there is one shopping list for several sessions
 * @param ways to the pages of each session, when there are several
 */
public record AnswerSection(
        String whose,
        String forWhom,
        List<Tile> tiles,
        List<String> dishes,
        List<OnTarget> hits,
        boolean shopOnce,
        List<WayThrough> ways) {
    /** @param sessions one page for each cooking session of the plan */
    static AnswerSection of(PlanAnswer answer, Plan plan, List<PlanPage> sessions) {
        boolean once = plan.isCookedOnce();
        boolean shopOnce = answer.asked().shopOnce();
        return new AnswerSection(
                "Batchwright · " + (once ? "" : "first ") + "cooking day "
                        + Dates.inFull(answer.kitchen().cookingDay()),
                PlanPage.forWhom(answer),
                tiles(answer, plan, sessions),
                dishes(plan),
                plan.first().eaters().stream()
                        .map(eater -> OnTarget.of(
                                eater.seat(), days(sessions, eater.seat().eater())))
                        .toList(),
                shopOnce,
                once
                        ? List.of()
                        : sessions.stream().map(page -> way(page, shopOnce)).toList());
    }

    /** 10 × Chickpea tagine; of several sessions all containers together. */
    private static List<String> dishes(Plan plan) {
        var containers = new LinkedHashMap<String, Integer>();
        plan.batches().forEach(batch -> containers.merge(batch.dish().name(), batch.containers(), Integer::sum));
        return containers.entrySet().stream()
                .map(dish -> dish.getValue() + " × " + dish.getKey())
                .toList();
    }

    private static List<Tile> tiles(PlanAnswer answer, Plan plan, List<PlanPage> sessions) {
        boolean once = plan.isCookedOnce();
        int containers = sessions.stream().mapToInt(PlanPage::containers).sum();
        int minutes = sessions.stream().mapToInt(p -> p.schedule().minutes()).sum();
        Currency currency = answer.kitchen().currency();
        return List.of(
                new Tile(
                        "Cost",
                        Show.money(plan.cost(), currency),
                        Show.underBudget(answer.budget(), plan.cost(), currency).orElse("no budget was set")),
                new Tile("Proof", isPlanned(answer) ? "Proven cheapest" : "Not proven cheapest", proof(answer, plan)),
                new Tile(
                        "To cook",
                        once
                                ? Show.count(plan.batches().size(), "dish", "dishes")
                                : Show.count(sessions.size(), "session", "sessions"),
                        Show.count(containers, "container", "containers")),
                new Tile(
                        once ? "Time to cook" : "Time to cook, all sessions",
                        "About " + ScheduleWords.duration(minutes),
                        work(plan, sessions)));
    }

    private static String work(Plan plan, List<PlanPage> sessions) {
        int hands =
                sessions.stream().mapToInt(p -> p.schedule().handsOnMinutes()).sum();
        boolean early = plan.isCookedOnce()
                && plan.batches().stream().anyMatch(b -> !Work.dayBefore(b).isEmpty());
        return ScheduleWords.duration(hands) + " of it hands on"
                + (early ? "; something to do the evening before" : "");
    }

    private static boolean isPlanned(PlanAnswer answer) {
        return answer.status() == PlanAnswer.Status.PLANNED;
    }

    private static String proof(PlanAnswer answer, Plan plan) {
        boolean once = plan.isCookedOnce();
        if (isPlanned(answer)) {
            return once ? "no plan that keeps every rule costs less" : "no other sessions cost less";
        }
        Money bound = answer.proof().lowerBound();
        return "at most " + PlanText.percentAbove(plan.cost(), bound) + " % above the cheapest; "
                + (once ? "none costs less than " : "none cost less than ")
                + Show.money(bound, answer.kitchen().currency())
                + (once ? "" : ", as if what keeps were sold by the gram");
    }

    private static List<EatenDay> days(List<PlanPage> sessions, Eater eater) {
        return sessions.stream()
                .flatMap(page -> page.plan().eaters().stream()
                        .filter(days -> days.seat().eater().equals(eater))
                        .flatMap(days -> page.eaten(days).stream()))
                .toList();
    }

    private static WayThrough way(PlanPage page, boolean shopOnce) {
        String says = "cook on day " + page.firstDay() + ", "
                + Dates.shortly(page.plan().cookingDay()) + ", for days "
                + page.firstDay() + " to " + page.plan().lastDay() + ": "
                + Show.count(page.plan().batches().size(), "dish", "dishes") + ", "
                + Show.count(page.containers(), "container", "containers") + ", about "
                + ScheduleWords.duration(page.schedule().minutes())
                + (shopOnce ? "." : "; shop for " + Show.money(page.plan().cost(), page.currency()) + ".");
        return page.way("Session " + page.session(), says, shopOnce ? "At home" : "Shop");
    }
}

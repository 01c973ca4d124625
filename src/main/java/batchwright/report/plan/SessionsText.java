package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.report.cooking.CookText;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.cooking.LeftOut;
import batchwright.report.cooking.ScheduleText;
import batchwright.report.notice.NoticesText;
import batchwright.report.plan.SessionsAnswer.One;
import batchwright.report.plan.SessionsAnswer.Stretch;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.shopping.BuyText;
import batchwright.report.shopping.PantryText;
import batchwright.schedule.Schedule;
import java.util.stream.Collectors;

/** Several cooking sessions for people: the answer in one sentence, then session by session, and last what holds for all. */
public final class SessionsText {
    private final SessionsAnswer answer;
    private final Commands commands;
    private final KitchenClock clock;
    private final Page page;

    private SessionsText(SessionsAnswer answer, Commands commands, KitchenClock clock, Page page) {
        this.answer = answer;
        this.commands = commands;
        this.clock = clock;
        this.page = page;
    }

    /**
     * @param allNutrients whether every nutrient is shown beside what is published, not only what is short or above
     * @param width in columns
     */
    public static String of(
            SessionsAnswer answer, Commands commands, boolean allNutrients, KitchenClock clock, int width) {
        return answer.sessions().isEmpty()
                ? withoutPlan(answer, commands, width)
                : new SessionsText(answer, commands, clock, new Page(width)).text(allNutrients);
    }

    private static String withoutPlan(SessionsAnswer answer, Commands commands, int width) {
        return PlanText.of(answer.whole(), commands, false, width)
                + answer.stuck().map(days -> stuck(days, width)).orElse("");
    }

    private static String stuck(Stretch days, int width) {
        var page = new Page(width);
        page.gap().paragraph(days.hasNoPlan());
        return page.toString();
    }

    private String text(boolean allNutrients) {
        PlanAnswer whole = answer.whole();
        Currency currency = whole.kitchen().currency();
        page.paragraph(Show.count(whole.days(), "day", "days") + " for "
                + whole.needs().stream().map(n -> n.eater().name()).collect(Collectors.joining(" and "))
                + ", cooked on days "
                + answer.sessions().stream()
                        .map(s -> Integer.toString(s.firstDay()))
                        .collect(Collectors.joining(", "))
                + ": " + Show.money(answer.cost(), currency)
                + Show.budget(whole.budget(), currency) + ", "
                + (whole.status() == PlanAnswer.Status.PLANNED ? "proven cheapest" : "not proven cheapest") + ".");
        if (answer.shopOnce()) {
            new BuyOnceText(answer, page).write();
        }
        for (int s = 0; s < answer.sessions().size(); s++) {
            session(s + 1, answer.sessions().get(s), currency);
        }
        page.gap().line("=".repeat(page.width()));
        page.line("ALL SESSIONS");
        new IntakesText(whole.needs(), answer::intakes, page).write(allNutrients);
        proof(currency);
        new NoticesText(whole.needs().size(), page).write(answer.notices());
        LeftOut.says(whole.kitchen()).ifPresent(says -> page.gap().paragraph("", "  ", says));
        page.gap().paragraph("", "  ", commands.shows(answer.dishes()));
        return page.toString();
    }

    private void session(int number, One session, Currency currency) {
        PlanAnswer one = session.answer();
        page.gap().line("=".repeat(page.width()));
        page.paragraph(
                "SESSION " + number + " of " + answer.sessions().size() + ": cook on day " + session.firstDay() + ", "
                        + one.kitchen().cookingDay() + ", for days " + session.firstDay() + "-" + session.lastDay()
                        + (answer.shopOnce()
                                ? ""
                                : "; shop for " + Show.money(session.plan().cost(), currency)));
        Schedule schedule = Schedule.of(session.plan().batches(), one.kitchen().equipment());
        new CookText(one.kitchen(), session.plan(), schedule, page, session.firstDay()).write();
        new ScheduleText(schedule, clock, page).write();
        new DaysText(session.plan(), page, session.firstDay()).write();
        if (answer.shopOnce()) {
            new PantryText(one, session.plan(), commands, page).write();
        } else {
            new BuyText(one, session.plan(), commands, page).write();
        }
        if (number > 1) {
            page.paragraph(
                    "  ",
                    "    ",
                    "At home is also what the sessions before leave; but of a food that is perishable in foods/catalogue.csv no opened"
                            + " pack is counted on.");
        }
    }

    private void proof(Currency currency) {
        page.heading("PROOF");
        Proof proof = answer.whole().proof();
        if (answer.status() == PlanAnswer.Status.PLANNED) {
            page.paragraph("  ", "  ", "No other sessions cost less: " + PlanText.searched(proof) + ".");
        } else {
            page.paragraph(
                    "  ",
                    "  ",
                    (proof.interrupted() ? "Interrupted before the proof. " : "")
                            + "Not proven: no sessions cost less than "
                            + Show.money(proof.lowerBound(), currency)
                            + ", as if what keeps were sold by the gram; these "
                            + PlanText.percentAbove(answer.cost(), proof.lowerBound()) + " % more; "
                            + PlanText.searched(proof) + ". More time: --seconds.");
            alone();
        }
        answer.audit()
                .ifPresent(audit -> page.paragraph(
                        "  ",
                        "  ",
                        "Every number above was worked out again from the files: "
                                + Show.count(audit.checks().size(), "check", "checks") + " passed."));
    }

    private void alone() {
        String proven = "";
        for (int s = 0; s < answer.sessions().size(); s++) {
            if (answer.sessions().get(s).answer().status() == PlanAnswer.Status.PLANNED) {
                proven += (proven.isEmpty() ? "" : ", ") + (s + 1);
            }
        }
        if (!proven.isEmpty()) {
            page.paragraph(
                    "  ",
                    "  ",
                    "Proven cheapest for its own days, with what the sessions before leave: session " + proven + ".");
        }
    }
}

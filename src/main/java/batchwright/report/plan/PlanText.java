package batchwright.report.plan;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.needs.Needs;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.CookText;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.cooking.LeftOut;
import batchwright.report.cooking.ScheduleText;
import batchwright.report.notice.NoticesText;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.shopping.BuyText;
import batchwright.report.shopping.OneTripText;
import batchwright.report.shopping.PantryText;
import batchwright.report.why.FrontierText;
import batchwright.report.why.WhyText;
import batchwright.schedule.Schedule;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** A plan for people: the answer in one sentence, then what to cook, eat and buy, how sure it is, and the cautions. */
public final class PlanText {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);
    /** Of all eaters together, in the first sentence. */
    private static final int LONGEST_NAMES = 80;

    private final PlanAnswer answer;
    private final Commands commands;
    private final boolean allNutrients;
    private final KitchenClock clock;
    private final Page page;

    private PlanText(PlanAnswer answer, Commands commands, boolean allNutrients, KitchenClock clock, Page page) {
        this.answer = answer;
        this.commands = commands;
        this.allNutrients = allNutrients;
        this.clock = clock;
        this.page = page;
    }

    /**
     * @param allNutrients whether every nutrient is shown beside what is published, not only what is short or above
     * @param width in columns
     */
    public static String of(PlanAnswer answer, Commands commands, boolean allNutrients, int width) {
        return of(answer, commands, allNutrients, KitchenClock.FROM_ZERO, width);
    }

    /** With the times of cooking by a clock. */
    public static String of(PlanAnswer answer, Commands commands, boolean allNutrients, KitchenClock clock, int width) {
        return new PlanText(answer, commands, allNutrients, clock, new Page(width)).text();
    }

    private String text() {
        answer.plan().ifPresentOrElse(this::plan, this::noPlan);
        if (!answer.stoppedByCaution()) {
            LeftOut.says(answer.kitchen()).ifPresent(says -> page.gap().paragraph("", "  ", says));
        }
        return page.toString();
    }

    private void plan(Plan plan) {
        page.paragraph(forWhom() + cookedOn(plan) + ": " + Show.money(plan.cost(), currency())
                + Show.budget(answer.budget(), plan.cost(), currency()) + ", " + proven() + ".");
        new FirstScreen(answer, plan, page).write();
        if (plan.isCookedOnce()) {
            cookAndEat(answer);
            intakes();
            new BuyText(answer, commands, page).write();
        } else {
            sessions(plan);
            page.gap().line("=".repeat(page.width()));
            page.line("ALL SESSIONS");
            intakes();
        }
        new ProofText(answer, plan, page).write();
        insight();
        new NoticesText(answer.needs().size(), page).write(Notice.of(answer));
        page.gap()
                .paragraph(
                        "",
                        "  ",
                        commands.shows(plan.batches().stream()
                                .map(batch -> batch.dish().id())
                                .distinct()
                                .toList()));
    }

    private static String cookedOn(Plan plan) {
        return plan.isCookedOnce()
                ? ""
                : ", cooked on days "
                        + plan.sessions().stream()
                                .map(session -> Integer.toString(session.firstDay()))
                                .collect(Collectors.joining(", "));
    }

    private void cookAndEat(PlanAnswer one) {
        Session session = one.plan().orElseThrow().first();
        Schedule schedule = one.schedule().orElseThrow();
        new CookText(session, schedule, page).write();
        new ScheduleText(schedule, clock, page).write();
        new DaysText(session, page).write();
    }

    private void intakes() {
        new IntakesText(answer, page).write(allNutrients);
    }

    private void sessions(Plan plan) {
        boolean shopOnce = answer.asked().shopOnce();
        if (shopOnce) {
            new OneTripText(plan, currency(), page).write();
        }
        int number = 0;
        for (PlanAnswer one : answer.sessions()) {
            Session session = one.plan().orElseThrow().first();
            number++;
            page.gap().line("=".repeat(page.width()));
            page.paragraph("SESSION " + number + " of " + plan.sessions().size() + ": cook on day " + session.firstDay()
                    + ", " + session.cookingDay() + ", for days " + session.firstDay() + "-" + session.lastDay()
                    + (shopOnce ? "" : "; shop for " + Show.money(session.cost(), currency())));
            cookAndEat(one);
            if (shopOnce) {
                new PantryText(one, commands, page).write();
            } else {
                new BuyText(one, commands, page).write();
            }
            if (number > 1) {
                page.paragraph(
                        "  ",
                        "    ",
                        "At home is also what the sessions before leave; but of a food that is perishable in"
                                + " foods/catalogue.csv no opened pack is counted on.");
            }
        }
    }

    private void insight() {
        answer.insight().why().ifPresent(why -> new WhyText(why, answer, page).write());
        answer.insight().frontier().ifPresent(frontier -> new FrontierText(frontier, answer, page).write());
        answer.insight().secondOpinion().ifPresent(opinion -> new SecondOpinionText(opinion, answer, page).write());
    }

    private Currency currency() {
        return answer.kitchen().currency();
    }

    private String forWhom() {
        String names =
                answer.needs().stream().map(n -> FirstScreen.shown(n.eater())).collect(Collectors.joining(" and "));
        return Show.count(answer.days(), "day", "days") + " for "
                + (names.length() <= LONGEST_NAMES ? names : answer.needs().size() + " eaters");
    }

    private String proven() {
        return answer.status() == PlanAnswer.Status.PLANNED ? "proven cheapest" : "not proven cheapest";
    }

    /** Not the seconds: the same files give the same text. */
    static String searched(Proof proof) {
        return Show.count((int) Math.min(proof.nodes(), Integer.MAX_VALUE), "relaxation", "relaxations") + " solved";
    }

    public static String percentAbove(Money cost, Money bound) {
        if (bound.minor() == 0) {
            return "an unknown number of";
        }
        return BigDecimal.valueOf(cost.minor() - bound.minor())
                .multiply(PER_CENT)
                .divide(BigDecimal.valueOf(bound.minor()), 1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private void noPlan() {
        var words = new NoPlanWords(answer);
        if (answer.stoppedByCaution()) {
            page.paragraph("No plan for " + stopped() + ": a caution stops it.");
            new NoticesText(answer.needs().size(), page).write(Notice.of(answer));
        } else if (answer.status() == PlanAnswer.Status.NOT_PROVEN) {
            page.paragraph(forWhom() + ": no plan found "
                    + (answer.proof().interrupted() ? "before the interruption" : "in the time given")
                    + ", and no proof that there is none.");
            words.overBudget().ifPresent(page::paragraph);
            page.paragraph(
                    "Try more time with --seconds, fewer days, or profiles that name the few snacks an eater likes"
                            + " (snacks: only).");
            insight();
        } else {
            page.paragraph(forWhom() + ": no plan keeps every rule"
                    + answer.budget()
                            .map(b -> " within " + Show.money(b, currency()))
                            .orElse("") + ".");
            clashes(words);
            insight();
        }
        words.stuck().ifPresent(page::paragraph);
    }

    private String stopped() {
        return answer.needs().stream()
                .filter(Needs::stopsPlanning)
                .map(n -> n.eater().name())
                .collect(Collectors.joining(" and "));
    }

    private void clashes(NoPlanWords words) {
        if (answer.clashes().isEmpty()) {
            page.paragraph("Try a larger --budget or more --dishes, or loosen a wish in the profile.");
            return;
        }
        for (NoPlanWords.Section section : words.sections()) {
            page.gap().paragraph(section.heading());
            section.lines().forEach(this::line);
        }
        words.below().forEach(page::paragraph);
    }

    private void line(NoPlanWords.Line line) {
        page.item((line.rule().isEmpty() ? "" : line.rule() + ": ") + line.says());
        line.cure().ifPresent(cure -> page.paragraph("    ", "    ", cure));
        line.remedy().ifPresent(remedy -> page.paragraph("    ", "    ", remedy.text()));
    }
}

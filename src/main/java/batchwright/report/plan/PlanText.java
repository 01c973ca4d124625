package batchwright.report.plan;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.needs.Needs;
import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.CookText;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.cooking.LeftOut;
import batchwright.report.cooking.ScheduleText;
import batchwright.report.notice.NoticesText;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.RemedyText;
import batchwright.report.print.Show;
import batchwright.report.shopping.BuyText;
import batchwright.report.why.FrontierText;
import batchwright.report.why.WhyText;
import batchwright.schedule.Schedule;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** A plan for people: the answer in one sentence, then what to cook, eat and buy, how sure it is, and the cautions. */
public final class PlanText {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);
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
        page.paragraph(forWhom() + ": " + Show.money(plan.cost(), currency()) + Show.budget(answer.budget(), currency())
                + ", " + proven() + ".");
        Schedule schedule = Schedule.of(plan.batches(), answer.kitchen().equipment());
        new CookText(answer.kitchen(), plan, schedule, page).write();
        new ScheduleText(schedule, clock, page).write();
        new DaysText(plan, page).write();
        new IntakesText(answer, page).write(allNutrients);
        new BuyText(answer, plan, commands, page).write();
        proof(plan);
        insight();
        new NoticesText(answer.needs().size(), page).write(Notice.of(answer));
        page.gap()
                .paragraph(
                        "",
                        "  ",
                        commands.shows(plan.batches().stream()
                                .map(batch -> batch.dish().id())
                                .toList()));
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
        return Show.count(answer.days(), "day", "days") + " for "
                + answer.needs().stream().map(n -> n.eater().name()).collect(Collectors.joining(" and "));
    }

    private String proven() {
        return answer.status() == PlanAnswer.Status.PLANNED ? "proven cheapest" : "not proven cheapest";
    }

    private void proof(Plan plan) {
        page.heading("PROOF");
        Proof proof = answer.proof();
        if (answer.status() == PlanAnswer.Status.PLANNED) {
            page.paragraph("  ", "  ", "No plan that keeps every rule costs less: " + searched(proof) + ".");
        } else {
            Money bound = proof.lowerBound();
            page.paragraph(
                    "  ",
                    "  ",
                    (proof.interrupted() ? "Interrupted" : "Time ended") + " before the proof: no plan costs less than "
                            + Show.money(bound, currency())
                            + ", this one "
                            + percentAbove(plan.cost(), bound) + " % more; " + searched(proof)
                            + ". Try more time with --seconds, or profiles that name the few snacks an eater likes"
                            + " (snacks: only).");
        }
        answer.audit()
                .ifPresent(audit -> page.paragraph(
                        "  ",
                        "  ",
                        "Every number above was worked out again from the files: "
                                + Show.count(audit.checks().size(), "check", "checks") + " passed."));
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
        if (answer.stoppedByCaution()) {
            page.paragraph("No plan for " + stopped() + ": a caution stops it.");
            new NoticesText(answer.needs().size(), page).write(Notice.of(answer));
        } else if (answer.status() == PlanAnswer.Status.NOT_PROVEN) {
            page.paragraph(forWhom() + ": no plan found "
                    + (answer.proof().interrupted() ? "before the interruption" : "in the time given")
                    + ", and no proof that there is none.");
            new NoPlanWords(answer).overBudget().ifPresent(page::paragraph);
            page.paragraph(
                    "Try more time with --seconds, fewer days, or profiles that name the few snacks an eater likes"
                            + " (snacks: only).");
            insight();
        } else {
            page.paragraph(forWhom() + ": no plan keeps every rule"
                    + answer.budget()
                            .map(b -> " within " + Show.money(b, currency()))
                            .orElse("") + ".");
            clashes();
            insight();
        }
    }

    private String stopped() {
        return answer.needs().stream()
                .filter(Needs::stopsPlanning)
                .map(n -> n.eater().name())
                .collect(Collectors.joining(" and "));
    }

    private void clashes() {
        if (answer.clashes().isEmpty()) {
            page.paragraph("Try a larger --budget or more --dishes, or loosen a wish in the profile.");
            return;
        }
        var words = new NoPlanWords(answer);
        page.gap().paragraph(words.heading());
        words.clashes().forEach(clash -> clash(words, clash));
        words.perhaps().ifPresent(page::item);
        words.doubt().ifPresent(page::paragraph);
    }

    private void clash(NoPlanWords words, Clash clash) {
        page.item(Show.capital(clash.rule()) + ": " + clash.says() + ".");
        words.cure(clash).ifPresent(cure -> page.paragraph("    ", "    ", cure));
        clash.remedy().ifPresent(remedy -> page.paragraph("    ", "    ", "Try: " + RemedyText.of(remedy)));
    }
}

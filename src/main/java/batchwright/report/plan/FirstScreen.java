package batchwright.report.plan;

import batchwright.answer.Freezing;
import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.limit.DayTarget;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.cooking.Work;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.shopping.BuyText;
import batchwright.text.Echo;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What fits on the first screen: how much, what to cook, what it costs, what to do next. The whole follows. */
final class FirstScreen {
    /** With these, and the sentence above, no more than the 25 lines of a small terminal. */
    private static final int MOST_EATERS = 3;

    private static final int MOST_DISHES = 5;
    private static final int LINES = 22;
    private static final int LONGEST_NAME = 40;
    private static final String CUT = " ...";
    private static final String INDENT = " ".repeat(8);

    private final PlanAnswer answer;
    private final Plan plan;
    private final Page page;

    FirstScreen(PlanAnswer answer, Plan plan, Page page) {
        this.answer = answer;
        this.plan = plan;
        this.page = page;
    }

    void write() {
        page.gap();
        List<Said> all = new ArrayList<>();
        block(all, "EAT", eats(), 2 * MOST_EATERS, "below");
        block(all, "COOK", cooks(), MOST_DISHES, "dishes below");
        block(all, "PAY", pays(), MOST_EATERS, "sessions below");
        block(all, "NEXT", next(), MOST_DISHES, "steps below");
        int cautions = Notice.of(answer).size();
        all.add(new Said(
                "BELOW",
                "all of it"
                        + (cautions == 0
                                ? "."
                                : "; read the " + Show.count(cautions, "caution", "cautions") + " at its end first.")));
        int room = LINES - all.size();
        for (Said said : all) {
            int more = lines(said).size() - 1;
            write(said, more <= room);
            room -= more <= room ? more : 0;
        }
    }

    /** A line, and the word before it; empty for those after the first of a block. */
    private record Said(String word, String text) {}

    private static void block(List<Said> all, String word, List<String> lines, int most, String rest) {
        int shown = lines.size() <= most ? lines.size() : most - 1;
        for (int i = 0; i < shown; i++) {
            all.add(new Said(i == 0 ? word : "", lines.get(i)));
        }
        if (shown < lines.size()) {
            all.add(new Said("", "and " + (lines.size() - shown) + " more " + rest));
        }
    }

    private List<String> lines(Said said) {
        return Page.wrap(said.text(), width());
    }

    private int width() {
        return Math.min(page.width(), Page.PROSE) - INDENT.length();
    }

    /** @param whole or cut at a word after the first line */
    private void write(Said said, boolean whole) {
        String word = String.format(Locale.ROOT, "%-8s", said.word());
        if (whole) {
            page.paragraph(word, INDENT, said.text());
        } else {
            page.line(word + Page.wrap(said.text(), width() - CUT.length()).get(0) + CUT);
        }
    }

    /** How much, and what the first day is. */
    private List<String> eats() {
        List<String> lines = new ArrayList<>();
        for (EaterDays eater : plan.first().eaters()) {
            DayTarget target = eater.seat().target();
            Nutrients day = averageDay(eater.seat().eater().id());
            lines.add(shown(eater.seat().eater()) + ": " + Show.amount(day, Nutrient.ENERGY)
                    + " kcal on an average day (aim "
                    + target.energyAimKcal() + "), " + Show.amount(day, Nutrient.PROTEIN) + " g protein"
                    + " (at least " + target.day(Nutrient.PROTEIN).least() + ")");
            lines.add("Day 1: " + DaysText.eats(plan.first(), eater.days().get(0)));
        }
        return lines;
    }

    /** A long name loses its middle: what follows it must be seen, too. */
    static String shown(Eater eater) {
        return Echo.shortened(LONGEST_NAME, eater.name());
    }

    private Nutrients averageDay(String eater) {
        Nutrients sum = Nutrients.NONE;
        int days = 0;
        for (Session session : plan.sessions()) {
            for (EaterDays of : session.eaters()) {
                if (of.seat().eater().id().equals(eater)) {
                    sum = sum.plus(session.averageDay(of).times(BigDecimal.valueOf(session.days())));
                    days += session.days();
                }
            }
        }
        return days == 0 ? sum : sum.dividedBy(days);
    }

    private List<String> cooks() {
        List<String> lines = new ArrayList<>();
        for (Session session : plan.sessions()) {
            for (Batch batch : session.batches()) {
                lines.add(when(session) + batch.containers() + " x "
                        + batch.dish().name());
            }
        }
        return lines;
    }

    private List<String> pays() {
        List<String> lines = new ArrayList<>();
        BigDecimal each = plan.cost().shareOf(BigDecimal.ONE, BigDecimal.valueOf((long) answer.days() * eaters()));
        lines.add(Show.money(plan.cost(), currency())
                + Show.underBudget(answer.budget(), plan.cost(), currency())
                        .map(under -> ", " + under)
                        .orElse("") + "; " + currency().text(each) + " a day" + (eaters() == 1 ? "" : " and eater"));
        for (Session session : plan.sessions()) {
            lines.add(when(session)
                    + BuyText.things(session)
                    + (session.shopsVisited().isEmpty()
                            ? ", all is at home"
                            : " at " + String.join(" and ", session.shopsVisited())));
        }
        return lines;
    }

    private int eaters() {
        return Math.max(1, answer.needs().size());
    }

    private Currency currency() {
        return answer.kitchen().currency();
    }

    /** For the first cooking: the others follow in the same way. */
    private List<String> next() {
        PlanAnswer first = answer.sessions().get(0);
        Session session = plan.first();
        List<String> steps = new ArrayList<>();
        steps.add("Look at what is at home, then shop by the list BUY below (--shopping: for a phone).");
        session.batches().stream()
                .flatMap(batch -> Work.dayBefore(batch).stream())
                .forEach(step -> steps.add("The evening before: " + step));
        first.schedule()
                .ifPresent(schedule -> steps.add("Cook by the ORDER OF WORK: " + ScheduleWords.says(schedule) + "."));
        steps.add("Fill " + Show.count(containers(session), "container", "containers") + " by weight and chill them"
                + (Freezing.anyOf(session) ? "; some are frozen at once, see COOK." : "."));
        List<String> numbered = new ArrayList<>();
        steps.forEach(step -> numbered.add((numbered.size() + 1) + ". " + step));
        return numbered;
    }

    private static int containers(Session session) {
        return session.batches().stream().mapToInt(Batch::containers).sum();
    }

    private String when(Session session) {
        return plan.isCookedOnce() ? "" : "day " + session.firstDay() + ": ";
    }
}

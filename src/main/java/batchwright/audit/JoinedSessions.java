package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Recomputes what joins the sessions of a plan, and what it says of each: their days, the files they are planned by, what one leaves for
 * the next, the dishes in a row, the cost of all.
 */
final class JoinedSessions {
    private final PlanRequest request;
    private final Plan plan;
    private final List<Evidence> evidence;

    /** @param evidence of each session */
    JoinedSessions(PlanRequest request, Plan plan, List<Evidence> evidence) {
        this.request = request;
        this.plan = plan;
        this.evidence = evidence;
    }

    /** What each session is said to be planned for is what was asked of it. */
    List<AuditReport.Check> stated() {
        return List.of(
                check("sessions and days", this::days),
                check("files of each session", this::files),
                check("carried over", this::carriedOver));
    }

    /** Of several sessions. */
    List<AuditReport.Check> together() {
        return List.of(
                check("other dishes next time", this::variety),
                check("cost of all sessions", this::cost),
                check("budget", this::budget));
    }

    private static AuditReport.Check check(String name, Consumer<Findings> inspect) {
        var findings = new Findings();
        inspect.accept(findings);
        return findings.asCheck(name);
    }

    /** As many as were asked for, one after another through all days, none more than a day longer than another. */
    private void days(Findings findings) {
        if (plan.sessions().size() != request.cooking().sessions()) {
            findings.add(plan.sessions().size() + " sessions, asked for "
                    + request.cooking().sessions());
        }
        int next = 1;
        Set<Integer> lengths = new TreeSet<>();
        for (Session session : plan.sessions()) {
            LocalDate day = request.kitchen().cookingDay().plusDays(session.firstDay() - 1L);
            if (session.firstDay() != next) {
                findings.add("a session begins on day " + session.firstDay() + ", not on day " + next);
            }
            if (!session.request().kitchen().cookingDay().equals(day)) {
                findings.add("the session of day " + session.firstDay() + " is planned for "
                        + session.request().kitchen().cookingDay() + ", which is not " + day);
            }
            lengths.add(session.request().days());
            next += session.request().days();
        }
        if (next != request.days() + 1) {
            findings.add("the sessions reach day " + (next - 1) + ", asked for " + request.days());
        }
        if (lengths.stream().anyMatch(days -> days > lengths.iterator().next() + 1)) {
            findings.add("sessions for " + lengths + " days are not spread evenly");
        }
    }

    /** A session is planned by the files: the same eaters and targets, no other foods, dishes, packs and measures. */
    private void files(Findings findings) {
        for (Session session : plan.sessions()) {
            PlanRequest here = session.request();
            Kitchen kitchen = here.kitchen();
            if (!here.seats().equals(request.seats())
                    || here.mostDishes() != request.mostDishes()
                    || !here.variety().equals(request.variety())) {
                findings.add("the session of day " + session.firstDay()
                        + " is for other eaters or another number of dishes");
            }
            if (!kitchen.foods().equals(request.kitchen().foods())
                    || !kitchen.packs().equals(request.kitchen().packs())
                    || !kitchen.measures().equals(request.kitchen().measures())
                    || !kitchen.shops().equals(request.kitchen().shops())
                    || !request.kitchen()
                            .dishes()
                            .entrySet()
                            .containsAll(kitchen.dishes().entrySet())) {
                findings.add("the session of day " + session.firstDay() + " is not planned by the files");
            }
        }
    }

    /** The first session has what is at home; every other one just what the one before leaves. */
    private void carriedOver(Findings findings) {
        for (int s = 0; s < plan.sessions().size(); s++) {
            Session session = plan.sessions().get(s);
            Kitchen kitchen = session.request().kitchen();
            for (Food food : request.kitchen().foods().values()) {
                Map<LocalDate, BigDecimal> stated = LeftAtHome.byDate(kitchen.lotsOf(food));
                Map<LocalDate, BigDecimal> found = s == 0
                        ? LeftAtHome.byDate(request.kitchen().lotsOf(food))
                        : new LeftAtHome(evidence.get(s - 1), kitchen.cookingDay()).of(food);
                Set<LocalDate> dates = new TreeSet<>(stated.keySet());
                dates.addAll(found.keySet());
                for (LocalDate date : dates) {
                    BigDecimal said = stated.getOrDefault(date, BigDecimal.ZERO);
                    BigDecimal left = found.getOrDefault(date, BigDecimal.ZERO);
                    if (!Tolerance.same(said, left)) {
                        findings.add("day " + session.firstDay() + ": at home " + food.id() + " "
                                + Say.against(said, "left", left, "g"));
                    }
                }
            }
        }
    }

    private void variety(Findings findings) {
        Set<String> before = Set.of();
        for (Session session : plan.sessions()) {
            Set<String> here = new LinkedHashSet<>();
            session.batches().forEach(batch -> here.add(batch.dish().id()));
            for (String dish : here) {
                if (request.cooking().vary() && before.contains(dish)) {
                    findings.add(dish + " is cooked again on day " + session.firstDay());
                }
            }
            before = here;
        }
    }

    private long costMinor() {
        return evidence.stream().mapToLong(Evidence::costMinor).sum();
    }

    private String text(Money sum) {
        return request.kitchen().currency().text(sum);
    }

    private void cost(Findings findings) {
        var cost = new Money(Math.max(0, costMinor()));
        if (!plan.cost().equals(cost) || !plan.proof().cost().equals(cost)) {
            findings.add("stated " + text(plan.cost()) + ", proven "
                    + text(plan.proof().cost()) + ", recomputed " + text(cost));
        }
        if (plan.proof().lowerBound().compareTo(cost) > 0) {
            findings.add("no plan is said to cost less than "
                    + text(plan.proof().lowerBound()) + ", but this one costs " + text(cost));
        }
    }

    private void budget(Findings findings) {
        request.budget()
                .filter(budget -> costMinor() > budget.minor())
                .ifPresent(
                        budget -> findings.add("costs " + text(new Money(costMinor())) + ", budget " + text(budget)));
    }
}

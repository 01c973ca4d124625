package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import batchwright.plan.SessionsPlan;
import batchwright.plan.SessionsRequest;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Recomputes several cooking sessions: each by itself as {@link Audit} does, and what joins them: their days, what one leaves for the
 * next, the dishes in a row, the cost of all.
 */
public final class SessionsAudit {
    private final SessionsRequest request;
    private final SessionsPlan plan;
    private final List<Evidence> evidence;

    private SessionsAudit(SessionsRequest request, SessionsPlan plan) {
        this.request = request;
        this.plan = plan;
        this.evidence = plan.sessions().stream()
                .map(session -> Evidence.of(session.request(), session.plan()))
                .toList();
    }

    /** The checks of what joins the sessions, and then those of each session, its number before their names. */
    public static AuditReport of(SessionsRequest request, SessionsPlan plan) {
        return new SessionsAudit(request, plan).report();
    }

    private AuditReport report() {
        List<AuditReport.Check> checks = new ArrayList<>();
        checks.add(check("sessions and days", this::days));
        checks.add(check("files of each session", this::files));
        checks.add(check("carried over", this::carriedOver));
        checks.add(check("other dishes next time", this::variety));
        checks.add(check("cost of all sessions", this::cost));
        checks.add(check("budget", this::budget));
        for (int s = 0; s < plan.sessions().size(); s++) {
            Session session = plan.sessions().get(s);
            for (AuditReport.Check check :
                    Audit.of(session.request(), session.plan()).checks()) {
                checks.add(new AuditReport.Check(
                        "session " + (s + 1) + ": " + check.rule(), check.passed(), check.detail()));
            }
        }
        return new AuditReport(checks);
    }

    private static AuditReport.Check check(String name, Consumer<Findings> inspect) {
        var findings = new Findings();
        inspect.accept(findings);
        return findings.asCheck(name);
    }

    /** As many as were asked for, one after another through all days, none more than a day longer than another. */
    private void days(Findings findings) {
        if (plan.sessions().size() != request.cooks()) {
            findings.add(plan.sessions().size() + " sessions, asked for " + request.cooks());
        }
        int next = 1;
        Set<Integer> lengths = new TreeSet<>();
        for (Session session : plan.sessions()) {
            LocalDate day = request.whole().kitchen().cookingDay().plusDays(session.firstDay() - 1L);
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
        if (next != request.whole().days() + 1) {
            findings.add("the sessions reach day " + (next - 1) + ", asked for "
                    + request.whole().days());
        }
        if (lengths.stream().anyMatch(days -> days > lengths.iterator().next() + 1)) {
            findings.add("sessions for " + lengths + " days are not spread evenly");
        }
    }

    /** A session is planned by the files: the same eaters and targets, no other foods, dishes, packs and measures. */
    private void files(Findings findings) {
        PlanRequest whole = request.whole();
        for (Session session : plan.sessions()) {
            PlanRequest here = session.request();
            Kitchen kitchen = here.kitchen();
            if (!here.seats().equals(whole.seats()) || here.mostDishes() != whole.mostDishes()) {
                findings.add("the session of day " + session.firstDay() + " is for other eaters or more dishes");
            }
            if (!kitchen.foods().equals(whole.kitchen().foods())
                    || !kitchen.packs().equals(whole.kitchen().packs())
                    || !kitchen.measures().equals(whole.kitchen().measures())
                    || !whole.kitchen()
                            .dishes()
                            .entrySet()
                            .containsAll(kitchen.dishes().entrySet())) {
                findings.add("the session of day " + session.firstDay() + " is not planned by the files");
            }
        }
    }

    /** The first session has what is at home; each other just what the one before leaves. */
    private void carriedOver(Findings findings) {
        for (int s = 0; s < plan.sessions().size(); s++) {
            Session session = plan.sessions().get(s);
            Kitchen kitchen = session.request().kitchen();
            for (Food food : request.whole().kitchen().foods().values()) {
                Map<LocalDate, BigDecimal> stated = LeftAtHome.byDate(kitchen.lotsOf(food));
                Map<LocalDate, BigDecimal> found = s == 0
                        ? LeftAtHome.byDate(request.whole().kitchen().lotsOf(food))
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
            session.plan().batches().forEach(batch -> here.add(batch.dish().id()));
            for (String dish : here) {
                if (request.vary() && before.contains(dish)) {
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
        return request.whole().kitchen().currency().text(sum);
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
        request.whole()
                .budget()
                .filter(budget -> costMinor() > budget.minor())
                .ifPresent(
                        budget -> findings.add("costs " + text(new Money(costMinor())) + ", budget " + text(budget)));
    }
}

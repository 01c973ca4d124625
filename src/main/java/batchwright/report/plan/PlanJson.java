package batchwright.report.plan;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.audit.AuditReport;
import batchwright.needs.Needs;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.plan.SecondOpinion;
import batchwright.plan.Session;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.cooking.LeftOut;
import batchwright.report.cooking.ScheduleJson;
import batchwright.report.needs.IntakesJson;
import batchwright.report.needs.NeedsJson;
import batchwright.report.needs.TargetJson;
import batchwright.report.print.Json;
import batchwright.report.why.FrontierJson;
import batchwright.report.why.WhyJson;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A plan for scripts: schema batchwright.plan/1. Money in minor units. Grams of foods are edible raw grams; in shopping they
 * are as purchased. Of loose goods a pack is one step on the scale. Totals are rounded to 0.1 of their unit, the
 * {@code nutrients} of an average day to 0.01. {@code proof.seconds} is the only value that may differ
 * between two runs on the same files.
 *
 * <p>Of several cooking sessions days are counted through, and each day, batch and line of shopping has the number of its session.
 * {@code sessions} holds each in the form of a plan of its own, whose days are counted from its cooking day.
 */
public final class PlanJson {
    private static final BigDecimal MILLIS = BigDecimal.valueOf(1000);
    private final PlanAnswer answer;
    private final KitchenClock clock;
    private final List<PlanAnswer> sessions;
    private final List<SessionJson> each = new ArrayList<>();
    private final ObjectNode root = Json.schema("plan/1");

    private PlanJson(PlanAnswer answer, KitchenClock clock) {
        this.answer = answer;
        this.clock = clock;
        this.sessions = answer.sessions();
        for (PlanAnswer one : sessions) {
            each.add(new SessionJson(one, isOne() ? OptionalInt.empty() : OptionalInt.of(each.size() + 1)));
        }
    }

    public static String of(PlanAnswer answer) {
        return of(answer, KitchenClock.FROM_ZERO);
    }

    /** With the time at which cooking starts. */
    public static String of(PlanAnswer answer, KitchenClock clock) {
        return Json.text(object(answer, clock));
    }

    /** The same as an object, for answers that share some of it. */
    public static ObjectNode object(PlanAnswer answer, KitchenClock clock) {
        return new PlanJson(answer, clock).fields();
    }

    /** Whether there is one plan, not several sessions; also when there is none. */
    private boolean isOne() {
        return answer.asked().sessions() == 1;
    }

    private ObjectNode fields() {
        Optional<Plan> plan = answer.plan();
        root.put("status", answer.status().id());
        proof();
        root.put("currency", answer.kitchen().currency().code());
        Json.money(root, "cost_minor", plan.map(Plan::cost));
        Json.money(root, "trips_minor", plan.map(Plan::trips));
        Json.money(root, "budget_minor", answer.budget());
        root.put("cooking_day", answer.kitchen().cookingDay().toString());
        root.put("days", answer.days());
        ArrayNode eaters = root.putArray("eaters");
        answer.needs().forEach(needs -> eater(eaters.addObject(), needs));
        ArrayNode batches = root.putArray("batches");
        each.forEach(session -> session.batches(batches));
        ArrayNode shopping = root.putArray("shopping");
        each.forEach(session -> session.shopping(shopping));
        ArrayNode leftovers = root.putArray("leftovers");
        each.forEach(session -> session.leftovers(leftovers));
        ScheduleJson.put(root, plan.filter(p -> isOne()).map(Plan::first), answer.schedule(), clock);
        ObjectNode leftOut = root.putObject("not_in_this_kitchen");
        LeftOut.byNeed(answer.kitchen()).forEach((need, dishes) -> dishes.forEach(leftOut.putArray(need)::add));
        pantry();
        answer.audit().ifPresentOrElse(this::audit, () -> root.putNull("audit"));
        ClashesJson.put(root, answer.clashes());
        answer.insight().why().ifPresent(why -> WhyJson.put(root.putObject("why"), why));
        answer.insight().frontier().ifPresent(f -> FrontierJson.put(root.putObject("frontier"), f));
        answer.insight().secondOpinion().ifPresent(o -> secondOpinion(root.putObject("second_opinion"), o));
        ArrayNode cautions = root.putArray("cautions");
        Notice.of(answer).forEach(notice -> notice(cautions.addObject(), notice));
        if (!isOne()) {
            sessions();
        }
        return root;
    }

    private void proof() {
        Proof proof = answer.proof();
        boolean plan = answer.plan().isPresent();
        ObjectNode node = root.putObject("proof");
        node.put("proven_cheapest", answer.status() == PlanAnswer.Status.PLANNED);
        Json.money(node, "cost_minor", plan ? Optional.of(proof.cost()) : Optional.empty());
        Json.money(
                node,
                "lower_bound_minor",
                answer.status() == PlanAnswer.Status.NO_PLAN ? Optional.empty() : Optional.of(proof.lowerBound()));
        node.put("interrupted", proof.interrupted());
        node.put("close_enough", proof.closeEnough());
        node.put("nodes", proof.nodes());
        node.put("seconds", BigDecimal.valueOf(proof.took().toMillis()).divide(MILLIS, 2, RoundingMode.HALF_UP));
    }

    private static void secondOpinion(ObjectNode node, SecondOpinion opinion) {
        node.put("solver", opinion.solver());
        node.put("verdict", opinion.verdict().name().toLowerCase(Locale.ROOT));
        opinion.sameDishes().ifPresent(cost -> node.put("same_dishes_cost_minor", cost.minor()));
        opinion.found().ifPresent(cost -> node.put("found_cost_minor", cost.minor()));
        opinion.bound().ifPresent(cost -> node.put("lower_bound_minor", cost.minor()));
    }

    private void eater(ObjectNode node, Needs needs) {
        node.put("eater", needs.eater().id()).put("name", needs.eater().name());
        TargetJson.put(node, needs.target());
        ArrayNode days = node.putArray("days");
        for (int s = 0; s < sessions.size(); s++) {
            days(days, needs, s);
        }
        answer.plan()
                .flatMap(plan -> plan.averageDay(needs.eater()))
                .ifPresent(average -> node.set("average_day", Json.totals(average)));
        ArrayNode nutrients = node.putArray("nutrients");
        answer.intakes(needs).forEach(intake -> IntakesJson.put(nutrients.addObject(), intake));
    }

    private void days(ArrayNode days, Needs needs, int index) {
        Session session = sessions.get(index).plan().orElseThrow().first();
        session.eaters().stream()
                .filter(eater -> eater.seat().eater().equals(needs.eater()))
                .forEach(eater -> each.get(index).days(days, eater, isOne() ? 1 : session.firstDay()));
    }

    private void pantry() {
        ArrayNode useUp = root.putArray("use_up");
        each.forEach(session -> session.useUp(useUp));
        ArrayNode past = root.putArray("past_use_by");
        answer.kitchen()
                .pastTheirDate()
                .forEach((food, lots) -> lots.forEach(lot -> SessionJson.lot(
                        past.addObject(), food, lot.grams(), lot.useBy().orElseThrow())));
    }

    private void sessions() {
        root.put("cooks", answer.asked().sessions());
        root.put("shop", answer.asked().shopOnce() ? "once" : "each");
        ArrayNode array = root.putArray("sessions");
        for (PlanAnswer one : sessions) {
            Session session = one.plan().orElseThrow().first();
            array.addObject()
                    .put("session", array.size())
                    .put("first_day", session.firstDay())
                    .put("last_day", session.lastDay())
                    .setAll(object(one, clock));
        }
    }

    private void audit(AuditReport audit) {
        ObjectNode node = root.putObject("audit").put("passed", audit.passed());
        ArrayNode checks = node.putArray("checks");
        audit.checks()
                .forEach(check -> checks.addObject().put("rule", check.rule()).put("passed", check.passed()));
    }

    private static void notice(ObjectNode node, Notice notice) {
        notice.eater().ifPresent(needs -> node.put("eater", needs.eater().id()));
        NeedsJson.caution(node, notice.caution());
    }
}

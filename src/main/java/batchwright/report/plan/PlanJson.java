package batchwright.report.plan;

import batchwright.answer.BuyLine;
import batchwright.answer.Leftover;
import batchwright.answer.CoreTemperatures;
import batchwright.answer.DishesUsing;
import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.answer.SaltToAdd;
import batchwright.audit.AuditReport;
import batchwright.food.Food;
import batchwright.needs.Needs;
import batchwright.plan.Batch;
import batchwright.plan.Clash;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.SecondOpinion;
import batchwright.plan.Serving;
import batchwright.plan.UseUp;
import batchwright.report.cooking.CoreTemperaturesJson;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.cooking.ScheduleJson;
import batchwright.report.cooking.Work;
import batchwright.report.foods.PackJson;
import batchwright.report.needs.IntakesJson;
import batchwright.report.needs.NeedsJson;
import batchwright.report.needs.TargetJson;
import batchwright.report.print.Json;
import batchwright.report.print.RemedyText;
import batchwright.report.print.Show;
import batchwright.report.why.FrontierJson;
import batchwright.report.why.WhyJson;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * A plan for scripts: schema batchwright.plan/1. Money in minor units. Grams of foods are edible raw grams; in shopping they
 * are as purchased. Of loose goods a pack is one step on the scale. Totals are rounded to 0.1 of their unit, the
 * {@code nutrients} of an average day to 0.01. {@code proof.seconds} is the only value that may differ
 * between two runs on the same files.
 */
public final class PlanJson {
    private static final BigDecimal MILLIS = BigDecimal.valueOf(1000);
    private final PlanAnswer answer;
    private final ObjectNode root = Json.schema("plan/1");

    private PlanJson(PlanAnswer answer) {
        this.answer = answer;
    }

    public static String of(PlanAnswer answer) {
        return new PlanJson(answer).text();
    }

    /** The same as an object, for answers that share some of it. */
    public static ObjectNode object(PlanAnswer answer) {
        return new PlanJson(answer).fields();
    }

    private String text() {
        return Json.text(fields());
    }

    private ObjectNode fields() {
        Optional<Plan> plan = answer.plan();
        root.put("status", answer.status().id());
        proof();
        root.put("currency", answer.kitchen().currency().code());
        Json.money(root, "cost_minor", plan.map(Plan::cost));
        Json.money(root, "budget_minor", answer.budget());
        root.put("cooking_day", answer.kitchen().cookingDay().toString());
        root.put("days", answer.days());
        ArrayNode eaters = root.putArray("eaters");
        answer.needs().forEach(needs -> eater(eaters.addObject(), needs));
        ArrayNode batches = root.putArray("batches");
        ArrayNode shopping = root.putArray("shopping");
        plan.ifPresent(p -> {
            p.batches().forEach(batch -> batch(batches.addObject(), batch));
            BuyLine.of(p).forEach(line -> buy(shopping.addObject(), line));
        });
        ArrayNode leftovers = root.putArray("leftovers");
        plan.ifPresent(p -> Leftover.of(p).forEach(left -> leftover(leftovers.addObject(), left)));
        ScheduleJson.put(root, plan);
        pantry();
        answer.audit().ifPresentOrElse(audit -> audit(root, audit), () -> root.putNull("audit"));
        ArrayNode clashes = root.putArray("clashes");
        answer.clashes().forEach(clash -> clash(clashes.addObject(), clash));
        answer.insight().why().ifPresent(why -> WhyJson.put(root.putObject("why"), why));
        answer.insight().frontier().ifPresent(f -> FrontierJson.put(root.putObject("frontier"), f));
        answer.insight().secondOpinion().ifPresent(o -> secondOpinion(root.putObject("second_opinion"), o));
        ArrayNode cautions = root.putArray("cautions");
        Notice.of(answer).forEach(notice -> notice(cautions.addObject(), notice));
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
        answer.plan()
                .ifPresent(plan -> plan.eaters().stream()
                        .filter(e -> e.seat().eater().equals(needs.eater()))
                        .forEach(e -> e.days().forEach(day -> day(days.addObject(), plan, e, day))));
        answer.plan()
                .ifPresent(plan -> plan.eaters().stream()
                        .filter(e -> e.seat().eater().equals(needs.eater()))
                        .forEach(e -> node.set("average_day", Json.totals(plan.averageDay(e)))));
        ArrayNode nutrients = node.putArray("nutrients");
        answer.intakes(needs).forEach(intake -> IntakesJson.put(nutrients.addObject(), intake));
    }

    private static void day(ObjectNode node, Plan plan, EaterDays eater, Day day) {
        node.put("day", day.day());
        ArrayNode containers = node.putArray("containers");
        for (Serving serving : day.servings()) {
            containers
                    .addObject()
                    .put("dish", serving.dish().id())
                    .put("count", serving.count())
                    .put("from", serving.from().name().toLowerCase(Locale.ROOT));
        }
        ArrayNode snacks = node.putArray("snacks");
        day.snacks().forEach(snack -> Json.snack(snacks, snack));
        ArrayNode always = node.putArray("always");
        day.always().forEach(snack -> Json.snack(always, snack));
        node.set("totals", Json.totals(plan.totals(eater.seat().eater(), day)));
    }

    private void batch(ObjectNode node, Batch batch) {
        node.put("dish", batch.dish().id()).put("name", batch.dish().name()).put("containers", batch.containers());
        var work = Work.of(batch);
        node.put("minutes", work.minutes()).put("hands_on_minutes", work.handsOn());
        ArrayNode dayBefore = node.putArray("day_before");
        work.dayBefore().forEach(dayBefore::add);
        ArrayNode ingredients = node.putArray("ingredients");
        batch.ingredients().forEach((food, grams) -> {
            ObjectNode ingredient =
                    ingredients.addObject().put("food", food.id()).put("grams", Json.tenth(grams));
            Json.text(ingredient, "measure", KitchenMeasure.text(answer.kitchen(), food, grams));
        });
        CoreTemperaturesJson.put(
                node.putArray("core_temperatures"),
                CoreTemperatures.of(batch.ingredients().keySet()));
        ArrayNode fat = node.putArray("fat_poured_off");
        batch.fatToPourOff()
                .forEach((part, grams) ->
                        fat.addObject().put("part", part.name()).put("grams", Json.tenth(grams)));
        answer.plan().map(SaltToAdd::grams).map(salt -> salt.get(batch.dish())).ifPresentOrElse(
                grams -> node.put("salt_to_add_most_g", grams), () -> node.putNull("salt_to_add_most_g"));
        ArrayNode fills = node.putArray("fills");
        batch.fills().forEach(fill -> fill(fills.addObject(), fill));
    }

    private static void fill(ObjectNode node, Fill fill) {
        fill.eater().ifPresentOrElse(e -> node.put("eater", e.id()), () -> node.putNull("eater"));
        node.put("containers", fill.containers());
        ArrayNode parts = node.putArray("parts");
        for (Portion portion : fill.portions()) {
            ObjectNode part = parts.addObject()
                    .put("part", portion.part().name())
                    .put("raw_g", portion.rawGrams())
                    .put("cooked_g", portion.cookedGrams());
            if (portion.part().pieces()) {
                part.put("pieces", portion.pieces());
            } else {
                part.putNull("pieces");
            }
        }
        node.set("per_container", Json.totals(fill.perContainer()));
    }

    private void pantry() {
        ArrayNode useUp = root.putArray("use_up");
        answer.plan()
                .ifPresent(plan -> UseUp.of(answer.kitchen(), answer.days(), plan)
                        .forEach(u -> {
                            ObjectNode node = useUp.addObject();
                            lot(node, u.food(), u.grams(), u.useBy());
                            ArrayNode dishes = node.putArray("dishes");
                            new DishesUsing(answer).of(u.food()).forEach(dish -> dishes.add(dish.id()));
                        }));
        ArrayNode past = root.putArray("past_use_by");
        answer.kitchen()
                .pastTheirDate()
                .forEach((food, lots) -> lots.forEach(lot ->
                        lot(past.addObject(), food, lot.grams(), lot.useBy().orElseThrow())));
    }

    private static void lot(ObjectNode node, Food food, BigDecimal grams, LocalDate useBy) {
        node.put("food", food.id()).put("grams", Show.plain(grams, 1)).put("use_by", useBy.toString());
    }

    private void buy(ObjectNode node, BuyLine line) {
        node.put("food", line.food().id());
        node.put("pack_g", line.pack().map(p -> Show.plain(p.grams(), 2)).orElse(BigDecimal.ZERO));
        node.put("packs", line.packs());
        node.put("price_minor", line.pack().map(p -> p.price().minor()).orElse(0L));
        node.put("cost_minor", line.cost().minor());
        node.put("from_pantry_g", Show.plain(line.fromPantryGrams(), 1));
        node.put("used_g", Show.plain(line.usedGrams(), 1));
        node.put("left_g", Show.plain(line.leftGrams(), 1));
        line.pack()
                .ifPresentOrElse(
                        p -> {
                            node.put("shop", p.shop()).put("pack", p.label());
                            PackJson.put(node, p, answer.kitchen().cookingDay());
                        },
                        () -> {
                            node.putNull("shop").putNull("pack");
                            PackJson.none(node);
                        });
    }

    private static void leftover(ObjectNode node, Leftover left) {
        node.put("food", left.food().id());
        node.put("grams", Show.plain(left.grams(), 1));
        node.put("worth_minor", left.worth().minor());
        node.put("becomes", left.lasts() ? "stock" : "waste");
    }

    static void audit(ObjectNode root, AuditReport audit) {
        ObjectNode node = root.putObject("audit").put("passed", audit.passed());
        ArrayNode checks = node.putArray("checks");
        audit.checks()
                .forEach(check -> checks.addObject().put("rule", check.rule()).put("passed", check.passed()));
    }

    static void clash(ObjectNode node, Clash clash) {
        node.put("rule", clash.rule())
                .put("says", clash.says())
                .put("cure", clash.cure())
                .put("try", clash.remedy().map(RemedyText::of).orElse(""))
                .put("needed", clash.needed());
    }

    static void notice(ObjectNode node, Notice notice) {
        notice.eater().ifPresent(needs -> node.put("eater", needs.eater().id()));
        NeedsJson.caution(node, notice.caution());
    }
}

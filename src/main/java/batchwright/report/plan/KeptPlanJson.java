package batchwright.report.plan;

import batchwright.book.Event.Holds;
import batchwright.book.Event.Weight;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.FromBefore;
import batchwright.book.KeptPlan.Kept;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.KeptPart;
import batchwright.book.KeptPlan.KeptPurchase;
import batchwright.book.KeptPlan.KeptSwap;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads a plan that was kept as JSON, schema batchwright.plan/1. */
public final class KeptPlanJson {
    private static final String SCHEMA = "batchwright.plan/1";

    private static final String BOOK_LINE = "kept_after_book_line";

    private final JsonNode root;
    /** On which day each session cooks, by its number. */
    private final Map<Integer, Integer> firstDays = new HashMap<>();

    private KeptPlanJson(JsonNode root) {
        this.root = root;
        for (JsonNode session : root.path("sessions")) {
            firstDays.put(
                    session.path("session").asInt(), session.path("first_day").asInt());
        }
    }

    /**
     * @param number of how many plans kept for the same cooking day this is
     * @return empty when it is no plan, or one by a newer program
     */
    public static Optional<KeptPlan> read(String text, int number) {
        return Json.read(text)
                .filter(root -> root.path("schema").asText().equals(SCHEMA))
                .flatMap(root -> new KeptPlanJson(root).plan(number));
    }

    private Optional<KeptPlan> plan(int number) {
        try {
            return Optional.of(new KeptPlan(
                    LocalDate.parse(root.path("cooking_day").asText()),
                    new Kept(number, root.path(BOOK_LINE).asInt(), budget()),
                    root.path("days").asInt(),
                    days(),
                    batches(),
                    shopping(),
                    KeptWorkJson.read(root)));
        } catch (DateTimeException notAPlan) {
            return Optional.empty();
        }
    }

    /**
     * Notes how far the book went when the plan was kept.
     *
     * @param json the plan
     */
    public static String withBookLine(String json, int line) {
        return Json.read(json)
                .map(root -> Json.text(((ObjectNode) root).put(BOOK_LINE, line)))
                .orElse(json);
    }

    private OptionalLong budget() {
        JsonNode budget = root.path("budget_minor");
        return budget.isIntegralNumber() ? OptionalLong.of(budget.asLong()) : OptionalLong.empty();
    }

    private List<EatersDay> days() {
        var days = new ArrayList<EatersDay>();
        for (JsonNode eater : root.path("eaters")) {
            for (JsonNode day : eater.path("days")) {
                days.add(day(eater.path("eater").asText(), day));
            }
        }
        return days;
    }

    private static EatersDay day(String eater, JsonNode day) {
        var boxes = new ArrayList<PlannedBox>();
        for (JsonNode box : day.path("containers")) {
            boxes.add(new PlannedBox(
                    box.path("dish").asText(),
                    box.path("count").asInt(),
                    box.path("from").asText().equals("freezer"),
                    before(box)));
        }
        var snacks = new ArrayList<PlannedSnack>();
        day.path("snacks").forEach(snack -> snacks.add(snack(snack, false)));
        day.path("always").forEach(snack -> snacks.add(snack(snack, true)));
        return new EatersDay(day.path("day").asInt(), eater, boxes, snacks, number(day.path("totals"), "energy_kcal"));
    }

    private static Optional<FromBefore> before(JsonNode box) {
        return Optional.ofNullable(box.get("of"))
                .map(JsonNode::asText)
                .map(of -> new FromBefore(of, number(box, "energy_kcal")));
    }

    private static PlannedSnack snack(JsonNode snack, boolean always) {
        return new PlannedSnack(
                snack.path("food").asText(),
                snack.path("measure").asText(),
                snack.path("count").asInt(),
                number(snack, "grams"),
                always);
    }

    private List<KeptBatch> batches() {
        var batches = new ArrayList<KeptBatch>();
        for (JsonNode batch : root.path("batches")) {
            var ingredients = new ArrayList<Weight>();
            for (JsonNode ingredient : batch.path("ingredients")) {
                ingredients.add(new Weight(ingredient.path("food").asText(), number(ingredient, "grams")));
            }
            var fills = new ArrayList<KeptFill>();
            batch.path("fills").forEach(fill -> fills.add(fill(fill)));
            var dayBefore = new ArrayList<String>();
            batch.path("day_before").forEach(task -> dayBefore.add(task.asText()));
            batches.add(new KeptBatch(
                    firstDay(batch), batch.path("dish").asText(), ingredients, fills, swaps(batch), dayBefore));
        }
        return batches;
    }

    private static List<KeptSwap> swaps(JsonNode batch) {
        var swaps = new ArrayList<KeptSwap>();
        for (JsonNode swap : batch.path("swaps")) {
            swaps.add(new KeptSwap(
                    swap.path("food").asText(),
                    Optional.ofNullable(swap.path("by").textValue())));
        }
        return swaps;
    }

    private static KeptFill fill(JsonNode fill) {
        var parts = new ArrayList<KeptPart>();
        for (JsonNode part : fill.path("parts")) {
            parts.add(new KeptPart(
                    part.path("part").asText(),
                    part.path("raw_g").asInt(),
                    part.path("cooked_g").asInt()));
        }
        JsonNode each = fill.path("per_container");
        return new KeptFill(
                Optional.ofNullable(fill.path("eater").textValue()),
                fill.path("containers").asInt(),
                parts,
                new Holds(Optional.of(number(each, "energy_kcal")), Optional.of(number(each, "protein_g"))),
                number(fill, "volume_ml"));
    }

    private List<KeptPurchase> shopping() {
        var shopping = new ArrayList<KeptPurchase>();
        for (JsonNode line : root.path("shopping")) {
            if (line.path("packs").asInt() > 0) {
                shopping.add(new KeptPurchase(
                        firstDay(line),
                        line.path("food").asText(),
                        line.path("packs").asInt(),
                        number(line, "pack_g"),
                        line.path("cost_minor").asLong(),
                        line.path("shop").asText(""),
                        line.path("pack").asText("")));
            }
        }
        return shopping;
    }

    private int firstDay(JsonNode node) {
        return firstDays.getOrDefault(node.path("session").asInt(), 1);
    }

    private static BigDecimal number(JsonNode node, String name) {
        return node.path(name).decimalValue();
    }
}

package batchwright.report.print;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.plan.Snack;
import batchwright.quantity.Money;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pieces of JSON that several answers share. Numbers are plain decimals; fields keep the order they are put in. */
public final class Json {
    /** The totals of the contract: field name and what it counts. */
    static final Map<String, Nutrient> TOTALS = totals();

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();
    private static final ObjectWriter WRITER = MAPPER.writer(printer());

    private Json() {}

    private static Map<String, Nutrient> totals() {
        var totals = new LinkedHashMap<String, Nutrient>();
        totals.put("energy_kcal", Nutrient.ENERGY);
        totals.put("protein_g", Nutrient.PROTEIN);
        totals.put("fat_g", Nutrient.FAT);
        totals.put("carb_g", Nutrient.CARBOHYDRATE);
        totals.put("fibre_g", Nutrient.FIBRE);
        totals.put("fruit_veg_g", Nutrient.FRUIT_VEG);
        totals.put("sodium_mg", Nutrient.SODIUM);
        return totals;
    }

    private static DefaultPrettyPrinter printer() {
        var lines = new DefaultIndenter("  ", "\n"); // the same on every system
        return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    }

    public static ObjectNode object() {
        return NODES.objectNode();
    }

    public static ObjectNode schema(String name) {
        return object().put("schema", "batchwright." + name);
    }

    /** A JSON object, its numbers as they are written; empty when the text is none. */
    public static Optional<JsonNode> read(String text) {
        try {
            return Optional.ofNullable(MAPPER.readTree(text)).filter(JsonNode::isObject);
        } catch (JsonProcessingException notJson) {
            return Optional.empty();
        }
    }

    public static String text(ObjectNode object) {
        try {
            return WRITER.writeValueAsString(object) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same on one line. */
    public static String line(ObjectNode object) {
        try {
            return MAPPER.writeValueAsString(object) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    public static BigDecimal tenth(BigDecimal value) {
        return Show.plain(value, 1);
    }

    public static BigDecimal hundredth(double value) {
        return Show.plain(BigDecimal.valueOf(value), 2);
    }

    public static BigDecimal thousandth(double value) {
        return Show.plain(BigDecimal.valueOf(value), 3);
    }

    /** The totals of the contract, to 0.1; what some food has no value for is listed as incomplete: at least that much. */
    public static ObjectNode totals(Nutrients nutrients) {
        ObjectNode totals = object();
        TOTALS.forEach((name, nutrient) -> totals.put(name, tenth(nutrients.get(nutrient))));
        List<String> incomplete = TOTALS.entrySet().stream()
                .filter(e -> !nutrients.isComplete(e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
        if (!incomplete.isEmpty()) {
            ArrayNode names = totals.putArray("incomplete");
            incomplete.forEach(names::add);
        }
        return totals;
    }

    public static void snack(ArrayNode snacks, Snack snack) {
        snacks.addObject()
                .put("food", snack.measure().food().id())
                .put("measure", snack.measure().name())
                .put("count", snack.count())
                .put("grams", Show.plain(snack.grams(), 2));
    }

    /** Text, or null. */
    public static void text(ObjectNode object, String name, Optional<String> text) {
        text.ifPresentOrElse(t -> object.put(name, t), () -> object.putNull(name));
    }

    /** Minor units, or null. */
    public static void money(ObjectNode object, String name, Optional<Money> money) {
        money.ifPresentOrElse(m -> object.put(name, m.minor()), () -> object.putNull(name));
    }
}

package batchwright.report.export;

import batchwright.audit.proof.PlanProof;
import batchwright.audit.proof.PlanProof.Leaf;
import batchwright.audit.proof.PlanProof.Part;
import batchwright.audit.proof.PlanProof.Split;
import batchwright.audit.proof.PlanProof.Tree;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A proof as JSON lines, schema batchwright.proof/1: first what was asked and what is claimed, then a line for each part. A part names its
 * rows once; a leaf is a list of pairs, the place of a row in these and its multiplier; a split is its column, {@code at}, and two trees.
 */
public final class ProofLines {
    private static final String SCHEMA = "proof/1";
    private static final String MARK = "{\"schema\":\"batchwright.proof/";

    private ProofLines() {}

    /** Whether a text with this beginning is a proof. */
    public static boolean isIn(String beginning) {
        return beginning.startsWith(MARK);
    }

    public static String of(ProofFile file) {
        var text = new StringBuilder().append(head(file)).append('\n');
        file.proof().parts().forEach(part -> text.append(part(part)).append('\n'));
        return text.toString();
    }

    private static ObjectNode head(ProofFile file) {
        ObjectNode head = Json.schema(SCHEMA);
        ProofFile.Asked asked = file.asked();
        names(head, "eaters", asked.eaters());
        head.put("days", asked.days()).put("cooking_day", asked.day().toString());
        names(head, "cook", asked.dishes().only());
        names(head, "with", asked.dishes().with());
        names(head, "without", asked.dishes().without());
        names(head, "last_time", asked.dishes().lastTime());
        head.put("least_dishes", asked.dishes().least())
                .put("most_dishes", asked.dishes().most());
        names(head, "shops", asked.shops());
        return head.put("reserve", asked.reserve())
                .put("cost_minor", file.costMinor())
                .put("bound_minor", file.proof().boundMinor())
                .put("parts", file.proof().parts().size());
    }

    private static void names(ObjectNode object, String name, Iterable<String> names) {
        ArrayNode list = object.putArray(name);
        names.forEach(list::add);
    }

    private static ObjectNode part(Part part) {
        ObjectNode object = Json.object();
        names(object, "with", part.with());
        names(object, "among", part.among());
        Map<String, Integer> rows = new LinkedHashMap<>();
        JsonNode tree = tree(part.tree(), rows);
        names(object, "rows", rows.keySet());
        object.set("tree", tree);
        return object;
    }

    private static JsonNode tree(Tree tree, Map<String, Integer> rows) {
        ObjectNode object = Json.object();
        if (tree instanceof Leaf leaf) {
            ArrayNode pairs = object.putArray("leaf");
            leaf.multipliers().forEach((row, multiplier) -> {
                pairs.add(rows.computeIfAbsent(row, r -> rows.size()));
                pairs.add(multiplier);
            });
        } else if (tree instanceof Split split) {
            object.put("split", split.column()).put("at", split.at());
            object.set("low", tree(split.low(), rows));
            object.set("high", tree(split.high(), rows));
        }
        return object;
    }

    /** Empty when the text is no proof, or one by a newer program. */
    public static Optional<ProofFile> read(List<String> lines) {
        if (lines.isEmpty() || !isIn(lines.get(0))) {
            return Optional.empty();
        }
        Optional<JsonNode> head =
                Json.read(lines.get(0)).filter(h -> h.path("schema").asText().equals("batchwright." + SCHEMA));
        List<Part> parts = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            Optional<Part> part =
                    line.isBlank() ? Optional.empty() : Json.read(line).flatMap(ProofLines::part);
            part.ifPresent(parts::add);
            if (part.isEmpty() && !line.isBlank()) {
                return Optional.empty();
            }
        }
        return head.flatMap(h -> file(h, parts));
    }

    private static Optional<ProofFile> file(JsonNode head, List<Part> parts) {
        try {
            var dishes = new ProofFile.Dishes(
                    names(head.path("cook")),
                    names(head.path("with")),
                    names(head.path("without")),
                    names(head.path("last_time")),
                    head.path("least_dishes").asInt(),
                    head.path("most_dishes").asInt());
            var asked = new ProofFile.Asked(
                    names(head.path("eaters")),
                    head.path("days").asInt(),
                    dishes,
                    names(head.path("shops")),
                    LocalDate.parse(head.path("cooking_day").asText()),
                    head.path("reserve").decimalValue());
            return Optional.of(new ProofFile(
                    asked,
                    head.path("cost_minor").asLong(),
                    new PlanProof(head.path("bound_minor").asLong(), parts)));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    private static List<String> names(JsonNode list) {
        List<String> names = new ArrayList<>();
        list.forEach(name -> names.add(name.asText()));
        return names;
    }

    private static Set<String> set(JsonNode list) {
        return new LinkedHashSet<>(names(list));
    }

    private static Optional<Part> part(JsonNode object) {
        List<String> rows = names(object.path("rows"));
        return tree(object.path("tree"), rows)
                .map(tree -> new Part(set(object.path("with")), set(object.path("among")), tree));
    }

    private static Optional<Tree> tree(JsonNode object, List<String> rows) {
        if (object.path("leaf").isArray()) {
            return leaf(object.path("leaf"), rows);
        }
        if (!object.path("split").isTextual() || !object.path("at").isIntegralNumber()) {
            return Optional.empty();
        }
        return tree(object.path("low"), rows)
                .flatMap(low -> tree(object.path("high"), rows)
                        .map(high -> new Split(
                                object.path("split").asText(), object.path("at").asLong(), low, high)));
    }

    private static Optional<Tree> leaf(JsonNode pairs, List<String> rows) {
        var multipliers = new LinkedHashMap<String, BigDecimal>();
        for (int k = 0; k + 1 < pairs.size(); k += 2) {
            int row = pairs.get(k).asInt(-1);
            if (row < 0 || row >= rows.size() || !pairs.get(k + 1).isNumber()) {
                return Optional.empty();
            }
            multipliers.put(rows.get(row), pairs.get(k + 1).decimalValue());
        }
        return pairs.size() % 2 == 0 ? Optional.of(new Leaf(multipliers)) : Optional.empty();
    }
}

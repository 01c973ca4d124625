package batchwright.solve.mip;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** The cases of {@code published/optimisation_cases.json}; {@link PublishedModelsTest} says where they come from. */
final class PublishedModels {
    private PublishedModels() {}

    static Stream<JsonNode> cases() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                PublishedModels.class.getResourceAsStream("/published/optimisation_cases.json"))) {
            JsonNode all = new ObjectMapper().readTree(in).get("cases");
            return StreamSupport.stream(all.spliterator(), false).map(JsonNode.class::cast);
        }
    }

    static boolean maximises(JsonNode given) {
        return given.get("sense").asText().equals("max");
    }

    /** The model of a case, negated where the case asks for a maximum. */
    static MipModel model(JsonNode given, Map<String, Column> columns) {
        return model(given, columns, "", 0);
    }

    /** The same with the limits of one row moved. */
    static MipModel model(JsonNode given, Map<String, Column> columns, String movedRow, double moved) {
        boolean maximise = maximises(given);
        var model = new MipModel();
        var cost = new Expression();
        for (JsonNode v : given.get("variables")) {
            Column column = model.column(
                    v.get("name").asText(),
                    bound(v.get("lower"), Double.NEGATIVE_INFINITY),
                    bound(v.get("upper"), Double.POSITIVE_INFINITY),
                    v.get("integer").asBoolean(),
                    0);
            columns.put(column.name(), column);
            double price = Double.parseDouble(v.get("cost").asText());
            cost.plus(column, maximise ? -price : price);
        }
        for (JsonNode r : given.get("rows")) {
            var sum = new Expression();
            r.get("terms")
                    .properties()
                    .forEach(term -> sum.plus(
                            Objects.requireNonNull(columns.get(term.getKey())),
                            Double.parseDouble(term.getValue().asText())));
            double by = r.get("name").asText().equals(movedRow) ? moved : 0;
            model.row(
                    r.get("name").asText(),
                    sum,
                    bound(r.get("lower"), Double.NEGATIVE_INFINITY) + by,
                    bound(r.get("upper"), Double.POSITIVE_INFINITY) + by);
        }
        model.minimise(cost, 0);
        return model;
    }

    private static double bound(JsonNode node, double none) {
        return node == null || node.isNull() ? none : Double.parseDouble(node.asText());
    }
}

package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * Compares JSON with an example of its contract: every field of the example has to be there with a value of the same kind;
 * further fields are allowed. In an example, [x] means a list of such things, and the text "number?" or "text?" allows null.
 */
final class Shape {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Shape() {}

    static JsonNode parse(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new AssertionError("not JSON: " + json, e);
        }
    }

    static void check(JsonNode actual, String example) {
        List<String> wrong = new ArrayList<>();
        compare("$", actual, parse(example), wrong);
        assertThat(wrong).isEmpty();
    }

    private static void compare(String at, JsonNode actual, JsonNode example, List<String> wrong) {
        if (example.isObject()) {
            compareFields(at, actual, example, wrong);
        } else if (example.isArray()) {
            if (!actual.isArray()) {
                wrong.add(at + " is no list: " + actual);
            }
            for (int i = 0; i < actual.size() && !example.isEmpty(); i++) {
                compare(at + "[" + i + "]", actual.get(i), example.get(0), wrong);
            }
        } else if (!fits(actual, example.textValue())) {
            wrong.add(at + " is " + actual + ", not " + example.textValue());
        }
    }

    private static void compareFields(String at, JsonNode actual, JsonNode example, List<String> wrong) {
        if (!actual.isObject()) {
            wrong.add(at + " is no object: " + actual);
            return;
        }
        for (Iterator<String> names = example.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (actual.has(name)) {
                compare(at + "." + name, actual.get(name), example.get(name), wrong);
            } else {
                wrong.add(at + "." + name + " is not there");
            }
        }
    }

    private static boolean fits(JsonNode actual, String kind) {
        return switch (kind) {
            case "number" -> actual.isNumber() && decimals(actual) <= 2;
            case "decimal" -> actual.isNumber();
            case "number?" -> actual.isNull() || fits(actual, "number");
            case "whole" -> actual.isIntegralNumber();
            case "whole?" -> actual.isNull() || actual.isIntegralNumber();
            case "text" -> actual.isTextual() && !actual.textValue().isEmpty();
            case "words" -> actual.isTextual();
            case "text?" -> actual.isNull() || actual.isTextual();
            case "yes/no" -> actual.isBoolean();
            default -> kind.startsWith("=") && actual.asText().equals(kind.substring(1));
        };
    }

    private static int decimals(JsonNode number) {
        String text = number.asText();
        assertThat(text).doesNotContainIgnoringCase("e");
        return text.contains(".") ? text.length() - text.indexOf('.') - 1 : 0;
    }
}

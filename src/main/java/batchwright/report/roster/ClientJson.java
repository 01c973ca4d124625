package batchwright.report.roster;

import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A client as a JSON object: the columns of a roster are its fields. A group such as {@code "tape": {"neck": "38 cm"}} is the same as
 * {@code "tape.neck"}, a list the same as its members with commas between, and true and false are yes and no.
 */
public final class ClientJson {
    private ClientJson() {}

    /** Empty when the text is no JSON object. */
    public static Optional<Map<String, String>> read(String text) {
        return Json.read(text).map(object -> {
            Map<String, String> said = new LinkedHashMap<>();
            put(said, "", object);
            return said;
        });
    }

    private static void put(Map<String, String> said, String group, JsonNode object) {
        object.properties().forEach(field -> {
            String name = group + field.getKey();
            if (field.getValue().isObject()) {
                put(said, name + ".", field.getValue());
            } else {
                said.put(name, text(field.getValue()));
            }
        });
    }

    private static String text(JsonNode value) {
        if (value.isNull()) {
            return "";
        }
        if (value.isBoolean()) {
            return value.booleanValue() ? "yes" : "no";
        }
        if (!value.isArray()) {
            return value.asText();
        }
        List<String> members = new ArrayList<>();
        value.forEach(member -> members.add(member.asText()));
        return String.join(",", members);
    }
}

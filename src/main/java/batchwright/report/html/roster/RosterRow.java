package batchwright.report.html.roster;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A client on the page of a roster.
 *
 * @param attention why somebody should look; empty when nobody needs to
 * @param target energy and protein a day
 * @param plan what it costs
 * @param weight what was last weighed
 * @param page name of the file with the whole plan; may be empty
 */
public record RosterRow(String client, String attention, String target, String plan, String weight, String page) {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);
    /** A plan that may be dearer than need be by more than this is worth a look [%]. */
    private static final BigDecimal CLOSE = BigDecimal.valueOf(5);

    /**
     * From a line of {@link batchwright.report.roster.RosterJson}.
     *
     * @param pot the line that has the plan: this one, or one before
     * @param place of the client among the eaters of the pot, from 0
     */
    static RosterRow of(JsonNode line, JsonNode pot, int place) {
        String client = line.path("client").asText("");
        String name = line.path("client").isNull() ? "line " + line.path("line").asLong() : client;
        if (line.has("errors")) {
            JsonNode error = line.path("errors").path(0);
            return new RosterRow(name, sentence(error.path("wrong").asText()), "", "", "", "");
        }
        JsonNode plan = pot.path("plan");
        JsonNode eater = plan.path("eaters").path(place);
        return new RosterRow(
                name,
                attention(plan, eater),
                target(eater.path("targets")),
                plan(plan),
                weight(line.path("last_weighed")),
                pot.path("page").asText(""));
    }

    private static String attention(JsonNode plan, JsonNode eater) {
        return switch (plan.path("status").asText()) {
            case "planned" -> "";
            case "no_plan" -> "No plan: " + whyNot(plan, eater);
            default -> unproven(plan);
        };
    }

    private static String whyNot(JsonNode plan, JsonNode eater) {
        for (JsonNode caution : plan.path("cautions")) {
            boolean isTheirs = caution.path("eater")
                    .asText(eater.path("eater").asText())
                    .equals(eater.path("eater").asText());
            if (caution.path("stops_planning").asBoolean() && isTheirs) {
                return caution.path("text").asText();
            }
        }
        JsonNode clash = plan.path("clashes").path(0);
        if (clash.isMissingNode()) {
            return "nothing keeps every rule.";
        }
        String cure = clash.path("cure").asText();
        return clash.path("rule").asText() + ": " + clash.path("says").asText() + (cure.isEmpty() ? "" : " " + cure);
    }

    private static String unproven(JsonNode plan) {
        JsonNode proof = plan.path("proof");
        if (plan.path("cost_minor").isNull()) {
            return "No plan was found with the effort given.";
        }
        BigDecimal over = over(proof);
        return over.compareTo(CLOSE) > 0 ? "The plan may be up to " + over.toPlainString() + " % too dear." : "";
    }

    private static BigDecimal over(JsonNode proof) {
        BigDecimal bound = proof.path("lower_bound_minor").decimalValue();
        return bound.signum() <= 0
                ? PER_CENT
                : proof.path("cost_minor")
                        .decimalValue()
                        .subtract(bound)
                        .multiply(PER_CENT)
                        .divide(bound, 1, RoundingMode.HALF_UP);
    }

    private static String target(JsonNode targets) {
        JsonNode energy = targets.path("energy_kcal");
        JsonNode protein = targets.path("protein_g");
        return energy.isMissingNode()
                ? ""
                : whole(energy.path("aim")) + " kcal, " + whole(protein.path("min")) + " g protein";
    }

    private static String whole(JsonNode number) {
        return number.decimalValue().setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    private static String plan(JsonNode plan) {
        if (plan.path("cost_minor").isNull()) {
            return "";
        }
        String cost = Currency.of(plan.path("currency").asText())
                .map(currency -> currency.text(new Money(plan.path("cost_minor").asLong())))
                .orElse("");
        return cost + (plan.path("proof").path("proven_cheapest").asBoolean() ? "" : ", not proven");
    }

    private static String weight(JsonNode weighed) {
        return weighed.isMissingNode()
                ? ""
                : weighed.path("weight_kg").asText() + " kg on "
                        + weighed.path("date").asText() + " (profile "
                        + weighed.path("profile_kg").asText() + " kg)";
    }

    private static String sentence(String text) {
        return text.isEmpty() ? "" : Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }
}

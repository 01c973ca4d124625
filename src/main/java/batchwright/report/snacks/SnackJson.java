package batchwright.report.snacks;

import batchwright.answer.SnackAnswers;
import batchwright.report.needs.NeedsJson;
import batchwright.report.print.Json;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.RoundingMode;
import java.util.Locale;

/** Snacks for scripts: schema batchwright.snack/1. */
public final class SnackJson {
    private SnackJson() {}

    public static String of(SnackAnswers answers) {
        ObjectNode root = Json.schema("snack/1");
        root.put("status", answers.found().isEmpty() ? "not_reachable" : "found");
        root.put("currency", answers.currency().code());
        ask(root.putObject("ask"), answers.ask());
        ArrayNode found = root.putArray("answers");
        answers.found().forEach(offer -> offer(found.addObject(), offer));
        answers.atHome().ifPresent(home -> offer(root.putObject("from_home"), home));
        answers.shortfall().ifPresent(shortfall -> shortfall(root, shortfall));
        answers.stopped().ifPresent(needs -> NeedsJson.cautions(root, needs));
        return Json.text(root);
    }

    private static void ask(ObjectNode node, SnackAnswers.Ask ask) {
        node.put("energy_kcal", Show.plain(ask.kcal(), 2))
                .put("protein_g", Show.plain(ask.proteinG(), 2))
                .put("by", ask.by())
                .put("kinds", ask.kinds())
                .put("from_home", ask.fromHome());
        Json.money(node, "budget_minor", ask.budget());
        ask.mostKcal()
                .ifPresentOrElse(most -> node.put("most_kcal", Show.plain(most, 2)), () -> node.putNull("most_kcal"));
    }

    private static void offer(ObjectNode node, SnackAnswers.Offer offer) {
        ArrayNode items = node.putArray("items");
        offer.items().forEach(item -> Json.snack(items, item));
        node.put("energy_kcal", Json.tenth(offer.kcal()))
                .put("protein_g", Json.tenth(offer.proteinG()))
                .put("over_kcal", Json.tenth(offer.overKcal()))
                .put(
                        "cost_minor",
                        offer.costMinor().setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    private static void shortfall(ObjectNode root, SnackAnswers.Shortfall shortfall) {
        ObjectNode node = root.putObject("shortfall");
        node.put("missing", shortfall.missing().name().toLowerCase(Locale.ROOT))
                .put("kcal_short", Json.tenth(shortfall.kcalShort()))
                .put("protein_short_g", Json.tenth(shortfall.proteinShortG()));
        offer(node.putObject("closest"), shortfall.closest());
        shortfall.over().ifPresentOrElse(over -> offer(node.putObject("over"), over), () -> node.putNull("over"));
    }
}

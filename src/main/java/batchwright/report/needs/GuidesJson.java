package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.intakes.Reference;
import batchwright.needs.target.Guides;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Guides and published amounts for scripts; guides are null and the lists empty when a caution stops planning. */
final class GuidesJson {
    private GuidesJson() {}

    static void put(ObjectNode root, Needs needs) {
        needs.guides()
                .ifPresentOrElse(guides -> guides(root.putObject("guides"), guides), () -> root.putNull("guides"));
        ArrayNode lines = root.putArray("guide_lines");
        needs.guides().ifPresent(guides -> NeedsJson.lines(lines, guides.lines()));
        ArrayNode references = root.putArray("reference_intakes");
        needs.references().stream()
                .filter(IntakeWords::isBySexAndAge)
                .forEach(reference -> reference(references.addObject(), reference));
    }

    private static void guides(ObjectNode node, Guides guides) {
        node.putObject("carbohydrate_g").put("min", guides.carbohydrateLeastG()).put("max", guides.carbohydrateMostG());
        node.putObject("saturated_fat_g").put("max", guides.saturatedFatMostG());
        node.putObject("sodium_mg").put("max", Guides.SODIUM_MOST_MG);
        node.putObject("free_sugar_g").put("max", guides.freeSugarMostG());
    }

    private static void reference(ObjectNode node, Reference reference) {
        IntakesJson.nutrient(node, reference);
        IntakesJson.published(node, reference);
    }
}

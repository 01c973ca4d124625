package batchwright.reference.take;

import batchwright.food.Nutrient;
import batchwright.food.origin.OriginList;
import batchwright.reference.Sr28Food;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A proposal as one line of foods/catalogue.csv. */
public final class CatalogueLine {
    private CatalogueLine() {}

    /** @param columns as the catalogue's header names them; one that is not known stays empty */
    public static String of(Proposal proposal, List<String> columns) {
        Map<String, String> cells = cells(proposal);
        return columns.stream()
                .map(column -> quoted(cells.getOrDefault(column, "")))
                .collect(Collectors.joining(","));
    }

    private static Map<String, String> cells(Proposal proposal) {
        Sr28Food food = proposal.food();
        var cells = new HashMap<String, String>();
        Nutrient.columns().forEach(nutrient -> cells.put(nutrient.tagname(), food.written(nutrient)));
        cells.put("food", proposal.id());
        cells.put("name", proposal.name());
        cells.put("group", proposal.group());
        cells.put("usda_ndb", food.ndb());
        cells.put("usda_description", food.description());
        cells.put("REFUSE", food.refuse());
        cells.put("refuse_as_sold", proposal.refuseAsSold());
        cells.put("fruit_veg", Proposal.yesNo(proposal.keeping().fruitVeg()));
        cells.put("perishable", Proposal.yesNo(proposal.keeping().perishable()));
        cells.put("allergens", Proposal.joined(proposal.allergens()));
        cells.put("origins", OriginList.written(proposal.origins()));
        return cells;
    }

    private static String quoted(String text) {
        boolean plain = text.indexOf(',') < 0 && text.indexOf('"') < 0;
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}

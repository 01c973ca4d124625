package batchwright.page.cupboard;

import batchwright.app.label.EnterLabel;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.FormPage;
import batchwright.report.html.web.FormPage.Buttons;
import batchwright.report.html.web.FormPage.Choice;
import batchwright.report.html.web.FormPage.Field;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** A food as its pack describes it: one line more in the table of labels. */
public final class LabelPage implements Situation {
    private static final String HERE = "/cupboard/label";
    private static final List<String> COLUMNS = List.of(
            "name",
            "group",
            "label",
            "per",
            "energy",
            "fat_g",
            "saturated_g",
            "carbohydrate_g",
            "sugar_g",
            "fibre_g",
            "protein_g",
            "salt_or_sodium",
            "allergens",
            "perishable",
            "snack_max");

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, Map.of(), List.of())).post(HERE, LabelPage::sent);
    }

    private static void sent(Visit visit) {
        Map<String, String> cells = new LinkedHashMap<>();
        COLUMNS.forEach(column -> cells.put(column, visit.field(column)));
        EnterLabel.Entered entered = new EnterLabel(visit.workspace()).enter(cells);
        if (entered.wrong().isEmpty()) {
            visit.go(
                    "/cupboard",
                    "Added to your labels as " + entered.food() + ". Enter its price below, so that plans can buy it.");
            return;
        }
        show(
                visit,
                cells,
                COLUMNS.stream()
                        .filter(entered.wrong()::containsKey)
                        .map(column -> new Trouble(column, entered.wrong().getOrDefault(column, "")))
                        .toList());
    }

    private static void show(Visit visit, Map<String, String> typed, List<Trouble> troubles) {
        var page = new FormPage(
                visit.frame(Place.CUPBOARD, "A label", troubles),
                HERE,
                "Copy what stands on the pack. What it does not state stays empty: that is unknown, not nothing.",
                fields(visit, typed),
                List.of(),
                false,
                new Buttons("Add it to your foods", ""));
        visit.show("form", page, troubles.isEmpty());
    }

    private static List<Field> fields(Visit visit, Map<String, String> typed) {
        List<Choice> groups = new TreeSet<>(visit.workspace().kitchen().foods().values().stream()
                        .map(food -> food.group())
                        .toList())
                .stream()
                        .map(group -> new Choice(group, group.replace('_', ' ')))
                        .toList();
        return List.of(
                words("name", "Name", "What a cook would say.", typed),
                Field.choice("group", "Part of the shop", "", typed.getOrDefault("group", ""), groups),
                Field.choice(
                        "label",
                        "Kind of label",
                        "",
                        typed.getOrDefault("label", ""),
                        List.of(
                                new Choice("eu", "Europe: carbohydrate leaves the fibre out"),
                                new Choice("us", "United States, Canada: carbohydrate holds the fibre"))),
                words("per", "The figures are for", "100 g; 100 ml = 103 g; 1 bar = 45 g; 2/3 cup = 55 g.", typed),
                words("energy", "Energy", "370 kcal, 1550 kJ, or both: 1550 kJ / 370 kcal.", typed),
                words("fat_g", "Fat, g", "Such as 5.5, or <0.5.", typed),
                words("saturated_g", "Of it saturated, g (optional)", "", typed),
                words("carbohydrate_g", "Carbohydrate, g", "", typed),
                words("sugar_g", "Of it sugars, g (optional)", "", typed),
                words("fibre_g", "Fibre, g (optional)", "", typed),
                words("protein_g", "Protein, g", "", typed),
                words("salt_or_sodium", "Salt or sodium (optional)", "0.25 g salt, or 100 mg sodium.", typed),
                words("allergens", "Allergens (optional)", "As milk soy, with blanks between.", typed),
                Field.choice(
                        "perishable",
                        "Does an open pack spoil within two weeks?",
                        "",
                        typed.getOrDefault("perishable", ""),
                        List.of(new Choice("", "No"), new Choice("yes", "Yes"))),
                words(
                        "snack_max",
                        "Most of it in a day as a snack (optional)",
                        "1 to 3, where the figures are for a measure such as 1 bar = 45 g.",
                        typed));
    }

    private static Field words(String id, String label, String hint, Map<String, String> typed) {
        return Field.words(id, label, hint, typed.getOrDefault(id, ""));
    }
}

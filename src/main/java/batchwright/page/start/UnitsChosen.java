package batchwright.page.start;

import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.FormPage;
import batchwright.report.html.web.FormPage.Buttons;
import batchwright.report.html.web.FormPage.Choice;
import batchwright.report.html.web.FormPage.Field;
import batchwright.report.html.web.PageUnits;
import batchwright.report.html.web.Place;
import java.util.List;

/** The units of this browser. */
public final class UnitsChosen implements Situation {
    private static final String HERE = "/start/units";

    @Override
    public void open(Routes routes) {
        routes.get(HERE, UnitsChosen::show).post(HERE, UnitsChosen::choose);
    }

    private static void choose(Visit visit) {
        visit.choose(new PageUnits(
                visit.field("weight").equals("lb"),
                visit.field("energy").equals("kJ"),
                visit.field("food").equals("oz")));
        visit.go("/start", "This browser now uses these units.");
    }

    private static void show(Visit visit) {
        PageUnits units = visit.units();
        visit.show(
                "form",
                new FormPage(
                        visit.frame(Place.START, "Units"),
                        HERE,
                        "For the fridge and the cupboard in this browser. A number typed without a unit is in these; a decimal"
                                + " comma is understood. Your files, the desk, labels and printed pages keep kg, g and kcal.",
                        List.of(
                                choice("weight", "Body weight", units.pounds(), "kg", "lb"),
                                choice("energy", "Energy", units.kilojoules(), "kcal", "kJ"),
                                choice("food", "Food", units.ounces(), "g", "oz")),
                        List.of(),
                        false,
                        new Buttons("Use these", "")));
    }

    private static Field choice(String id, String label, boolean second, String one, String other) {
        return Field.choice(
                id, label, "", second ? other : one, List.of(new Choice(one, one), new Choice(other, other)));
    }
}

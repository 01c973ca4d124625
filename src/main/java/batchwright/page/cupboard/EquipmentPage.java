package batchwright.page.cupboard;

import batchwright.answer.Fault;
import batchwright.app.Refused;
import batchwright.app.profile.ChangePage;
import batchwright.app.profile.KeyChange;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.FormPage;
import batchwright.report.html.web.FormPage.Buttons;
import batchwright.report.html.web.FormPage.Field;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The stove, the pots and the boxes there are: lines of foods/kitchen.yaml. An empty field is as in a usual kitchen. */
public final class EquipmentPage implements Situation {
    private static final String HERE = "/cupboard/kitchen";
    private static final Set<String> LISTS = Set.of("pots", "pans");

    /** Key of the page of the kitchen, label, hint. */
    private static final List<List<String>> KEYS = List.of(
            List.of("burners", "Burners", "How many; 0 where there is none. Usual: 4."),
            List.of(
                    "burner_kw",
                    "Power of a burner, kW",
                    "What reaches the pot. Small gas 0.4, large gas 1.2, ceramic 1.3, induction 1.6. Usual: 1.2."),
            List.of("ovens", "Ovens", "0 where there is none. Usual: 1."),
            List.of("shelves", "Trays that brown at once", "With a fan 3. Usual: 2."),
            List.of("pots", "Pots, litres", "Of each, with commas between. Usual: 9.9, 5.4, 3.0."),
            List.of("pans", "Pans, litres", "28 cm hold 2.3, 30 cm 2.8. Usual: 2.3, 2.3."),
            List.of("rice_cooker", "Rice cooker", "Its litres, or yes; empty where there is none."),
            List.of("pressure_cooker", "Pressure cooker", "Its litres, or yes; empty where there is none."),
            List.of("slow_cooker", "Slow cooker", "Its litres, or yes; empty where there is none."),
            List.of("air_fryer", "Air fryer", "Its litres, or yes; empty where there is none."),
            List.of("microwave", "Microwave to cook with", "Its litres, or yes; empty where there is none."),
            List.of("cooks", "Cooks", "How many pairs of hands. Usual: 1."),
            List.of("largest_box_ml", "Largest box, ml", "Empty: any size."),
            List.of("largest_box_g", "Heaviest box, g", "Empty: any weight."),
            List.of("most_minutes", "Most minutes with your hands", "In one cooking session; empty: any."),
            List.of("done_within", "Most minutes until all is done", "From the start to the last box; empty: any."));

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, new ChangePage(visit.workspace()).writtenOfKitchen(), List.of()))
                .post(HERE, EquipmentPage::sent);
    }

    private static void sent(Visit visit) {
        var page = new ChangePage(visit.workspace());
        Map<String, String> before = page.writtenOfKitchen();
        Map<String, String> typed = new LinkedHashMap<>();
        KEYS.forEach(key -> typed.put(key.get(0), visit.field(key.get(0))));
        List<KeyChange> changes = changes(before, typed);
        if (changes.isEmpty()) {
            visit.go("/cupboard", "Nothing was changed.");
            return;
        }
        try {
            ChangePage.Went went = page.kitchen(changes);
            visit.go(
                    "/cupboard",
                    went.inPlace()
                            ? "Written into " + went.path() + "."
                            : "The page of the kitchen has a form that cannot surely be changed: the lines to put in are in "
                                    + went.path() + ".");
        } catch (Refused no) {
            show(visit, typed, no.faults().stream().map(EquipmentPage::trouble).toList());
        }
    }

    private static List<KeyChange> changes(Map<String, String> before, Map<String, String> typed) {
        List<KeyChange> changes = new ArrayList<>();
        typed.forEach((key, value) -> {
            if (value.isEmpty() && before.containsKey(key)) {
                changes.add(KeyChange.gone(key));
            } else if (!value.isEmpty() && !Objects.equals(value, before.get(key))) {
                changes.add(
                        LISTS.contains(key)
                                ? KeyChange.list(
                                        key,
                                        Arrays.stream(value.split(","))
                                                .map(String::strip)
                                                .filter(one -> !one.isEmpty())
                                                .toList())
                                : KeyChange.text(key, value));
            }
        });
        return changes;
    }

    /** At the field whose line of the page it is about. */
    private static Trouble trouble(Fault fault) {
        String line = fault.problem()
                .map(problem -> problem.at().file().line(problem.at().line()))
                .orElse("");
        String field = KEYS.stream()
                .map(key -> key.get(0))
                .filter(key -> line.strip().startsWith(key + ":"))
                .findFirst()
                .orElse(KEYS.get(0).get(0));
        return new Trouble(
                field,
                fault.wrong().substring(0, 1).toUpperCase(Locale.ROOT)
                        + fault.wrong().substring(1) + "; " + fault.cure() + ".");
    }

    private static void show(Visit visit, Map<String, String> typed, List<Trouble> troubles) {
        var page = new FormPage(
                visit.frame(Place.CUPBOARD, "Stove, pots and boxes", troubles),
                HERE,
                "Every line may stay empty: then it is as in a usual home kitchen. Plans and the order of work go by it.",
                KEYS.stream()
                        .map(key -> Field.words(key.get(0), key.get(1), key.get(2), typed.getOrDefault(key.get(0), "")))
                        .toList(),
                List.of(),
                false,
                new Buttons("Write it down", ""));
        visit.show("form", page, troubles.isEmpty());
    }
}

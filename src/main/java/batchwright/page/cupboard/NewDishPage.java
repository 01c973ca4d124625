package batchwright.page.cupboard;

import batchwright.answer.Fault;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.newdish.BatchLine;
import batchwright.app.newdish.DishInWords;
import batchwright.app.newdish.NewDish;
import batchwright.app.newdish.ProposedDish;
import batchwright.app.newdish.TypedDish;
import batchwright.food.Kitchen;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.FormPage;
import batchwright.report.html.web.FormPage.Buttons;
import batchwright.report.html.web.FormPage.Choice;
import batchwright.report.html.web.FormPage.Field;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A dish of one's own by one form: looked at as often as one likes, then written to a file of its own. */
public final class NewDishPage implements Situation {
    private static final String HERE = "/cupboard/dish";

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, TypedDish.NOTHING, List.of(), List.of(), false))
                .post(HERE, NewDishPage::sent);
    }

    private static TypedDish typed(Visit visit) {
        return new TypedDish(
                visit.field("name"),
                visit.field("containers"),
                visit.field("kind"),
                visit.lines("ingredients"),
                visit.lines("steps"),
                visit.field("days"),
                visit.field("freezes"));
    }

    private static void sent(Visit visit) {
        TypedDish typed = typed(visit);
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        var dishes = new NewDish(workspace, kitchen);
        var words = new DishInWords(kitchen);
        List<String> shown = new ArrayList<>();
        List<Trouble> troubles = troubles(typed, dishes, words, shown);
        if (!troubles.isEmpty()) {
            show(visit, typed, troubles, shown, false);
            return;
        }
        try {
            ProposedDish proposed = dishes.propose(typed);
            if (visit.field("write").equals("yes")) {
                visit.go("/cupboard", "Written: " + dishes.write(proposed) + ".");
                return;
            }
            shown.add("It keeps and freezes so: " + proposed.why() + ".");
            shown.addAll(words.review(proposed));
            show(visit, typed, List.of(), shown, true);
        } catch (Refused no) {
            show(
                    visit,
                    typed,
                    no.faults().stream()
                            .map(fault -> new Trouble("ingredients", sentence(fault)))
                            .toList(),
                    shown,
                    false);
        }
    }

    /** @param shown takes how each ingredient was understood */
    private static List<Trouble> troubles(TypedDish typed, NewDish dishes, DishInWords words, List<String> shown) {
        List<Trouble> troubles = new ArrayList<>();
        add(troubles, "name", dishes.wrongName(typed.name()));
        add(troubles, "containers", dishes.wrongContainers(typed.containers()));
        add(troubles, "days", dishes.wrongDays(typed.fridgeDays()));
        List<String> wrong = new ArrayList<>();
        for (String ingredient : typed.ingredients()) {
            BatchLine line = dishes.line(ingredient);
            if (line instanceof BatchLine.Wrong no) {
                wrong.add(ingredient + ": " + no.says());
            } else {
                shown.add(words.says(line));
            }
        }
        if (typed.ingredients().isEmpty()) {
            wrong.add("Enter what goes in, one a line.");
        }
        if (!wrong.isEmpty()) {
            troubles.add(new Trouble("ingredients", String.join(" ", wrong)));
        }
        return troubles;
    }

    private static void add(List<Trouble> troubles, String field, Optional<String> wrong) {
        wrong.ifPresent(says -> troubles.add(new Trouble(field, says)));
    }

    private static String sentence(Fault fault) {
        return fault.wrong().substring(0, 1).toUpperCase(Locale.ROOT)
                + fault.wrong().substring(1) + ". " + fault.cure();
    }

    private static void show(Visit visit, TypedDish typed, List<Trouble> troubles, List<String> shown, boolean right) {
        var page = new FormPage(
                visit.frame(Place.CUPBOARD, "A dish of your own", troubles),
                HERE,
                "What goes into one batch, in your words. Parts, keeping, steps and their minutes are proposed; "
                        + "nothing is written before you say so.",
                fields(typed),
                shown,
                right,
                new Buttons("Look at it", "Write it"));
        visit.show("form", page, troubles.isEmpty());
    }

    private static List<Field> fields(TypedDish typed) {
        return List.of(
                Field.words("name", "What is it called?", "Such as Bean chili with rice.", typed.name()),
                Field.words("containers", "How many boxes does the batch fill?", "1 to 40.", typed.containers()),
                Field.choice(
                        "kind",
                        "When is it eaten?",
                        "",
                        typed.kind(),
                        List.of(
                                new Choice("main", "Lunch or dinner"),
                                new Choice("breakfast", "Breakfast"),
                                new Choice("lunch", "Lunch"),
                                new Choice("dinner", "Dinner"))),
                Field.lines(
                        "ingredients",
                        "What goes in, for the whole batch",
                        "One a line: 500 g brown rice; 2 tbsp olive oil; 3 onions; 1 kg chicken breast, roasted; 10 g salt.",
                        String.join("\n", typed.ingredients())),
                Field.lines(
                        "steps",
                        "Steps (optional)",
                        "One a line, with minutes and degrees. Left empty, plain ones are proposed.",
                        String.join("\n", typed.steps())),
                Field.words("days", "Days in the fridge (optional)", "The cooking day is day 1.", typed.fridgeDays()),
                Field.choice(
                        "freezes",
                        "May it be frozen?",
                        "",
                        typed.freezes(),
                        List.of(new Choice("", "As proposed"), new Choice("yes", "Yes"), new Choice("no", "No"))));
    }
}

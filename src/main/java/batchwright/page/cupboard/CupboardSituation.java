package batchwright.page.cupboard;

import batchwright.answer.Fault;
import batchwright.app.EnterPrice;
import batchwright.app.Refused;
import batchwright.app.SeenPrice;
import batchwright.app.Workspace;
import batchwright.app.book.FindAtHome;
import batchwright.app.book.WriteInBook;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.CupboardPage;
import batchwright.report.html.web.PageUnits;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was counted goes into the book; a price changes its one line of foods/shop.csv. */
public final class CupboardSituation implements Situation {
    private static final String HERE = "/cupboard";

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, Map.of(), List.of()))
                .post(HERE + "/counted", CupboardSituation::counted)
                .post(HERE + "/price", CupboardSituation::price);
    }

    private static void show(Visit visit, Map<String, String> typed, List<Trouble> troubles) {
        Workspace workspace = visit.workspace();
        var page = CupboardPage.of(
                visit.frame(Place.CUPBOARD, "Cupboard", troubles),
                FindAtHome.answer(workspace),
                workspace.kitchen(),
                typed);
        if (troubles.isEmpty()) {
            visit.show("cupboard", page);
        } else {
            visit.showWrong("cupboard", page);
        }
    }

    private static void counted(Visit visit) {
        Map<String, String> typed = typed(visit, "counted-food", "grams", "until");
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        Optional<Food> food = food(kitchen, visit);
        if (food.isEmpty()) {
            show(visit, typed, List.of(new Trouble("counted-food", "Choose a food.")));
            return;
        }
        String until = visit.field("until");
        String words = "counted " + visit.units().foodWeight(visit.field("grams")) + " "
                + food.get().id() + (until.isEmpty() ? "" : " until " + until);
        try {
            new WriteInBook(workspace, kitchen, visit.field("sure").equals("yes"))
                    .add(words, visit.files().today());
            visit.go(HERE, "Written down: " + words + ".");
        } catch (Refused refused) {
            String says = says(refused);
            if (says.contains("you are sure")) {
                typed.put("unsure", "counted");
            }
            show(visit, typed, List.of(new Trouble("grams", says)));
        }
    }

    private static void price(Visit visit) {
        Map<String, String> typed = typed(visit, "price-food", "pack", "price", "shop");
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        Optional<Food> food = food(kitchen, visit);
        if (food.isEmpty()) {
            show(visit, typed, List.of(new Trouble("price-food", "Choose a food.")));
            return;
        }
        for (String field : List.of("pack", "price", "shop")) {
            if (visit.field(field).isEmpty()) {
                show(visit, typed, List.of(new Trouble(field, "Enter the " + field + ".")));
                return;
            }
        }
        try {
            var answer = new EnterPrice(workspace, kitchen)
                    .enter(
                            food.get(),
                            new SeenPrice(
                                    visit.field("shop"),
                                    visit.field("pack"),
                                    Optional.empty(),
                                    PageUnits.withPoint(visit.field("price"))));
            visit.go(
                    HERE,
                    "Line " + answer.number() + " of the table of prices is now: " + answer.line() + "."
                            + answer.priceBefore()
                                    .map(before -> " The price before: " + before + ".")
                                    .orElse(""));
        } catch (Refused refused) {
            show(visit, typed, List.of(new Trouble("price", says(refused))));
        }
    }

    private static Optional<Food> food(Kitchen kitchen, Visit visit) {
        return Optional.ofNullable(kitchen.foods().get(visit.field("food")));
    }

    /** @param food the id of the field that is called food */
    private static Map<String, String> typed(Visit visit, String food, String... fields) {
        Map<String, String> typed = new HashMap<>();
        typed.put(food, visit.field("food"));
        for (String field : fields) {
            typed.put(field, visit.field(field));
        }
        return typed;
    }

    private static String says(Refused refused) {
        return refused.faults().stream().map(CupboardSituation::sentence).collect(Collectors.joining(" "));
    }

    private static String sentence(Fault fault) {
        String wrong = fault.wrong();
        return Character.toUpperCase(wrong.charAt(0)) + wrong.substring(1) + ". " + fault.cure();
    }
}

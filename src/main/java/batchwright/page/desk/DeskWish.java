package batchwright.page.desk;

import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.TypedSum;
import batchwright.app.desk.Sliders;
import batchwright.page.Visit;
import batchwright.plan.Cooking;
import batchwright.plan.PlanRequest;
import batchwright.report.html.web.Trouble;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stands in the fields of the desk, as typed.
 *
 * @param dishes to be kept in and left out
 * @param changed of eaters, by their short names
 */
record DeskWish(
        List<String> eaters,
        String days,
        String budget,
        String mostDishes,
        String sessions,
        DishesWanted dishes,
        Map<String, EaterWish> changed) {
    private static final int MOST_EATERS = 6;
    private static final int MOST_DISHES = 10;
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    static final DeskWish USUAL = new DeskWish(
            List.of(),
            "" + PlanRequest.USUAL_DAYS,
            "",
            "" + PlanRequest.USUAL_MOST_DISHES,
            "1",
            DishesWanted.ANY,
            Map.of());

    /**
     * @param eaters there are; others are not taken
     * @param dishes there are
     */
    static DeskWish of(Visit visit, List<WrittenEater> eaters, List<String> dishes) {
        List<String> ticked = visit.fields("eater");
        Map<String, EaterWish> changed = new LinkedHashMap<>();
        eaters.forEach(eater -> changed.put(eater.id(), EaterWish.of(visit, eater)));
        return new DeskWish(
                eaters.stream().map(WrittenEater::id).filter(ticked::contains).toList(),
                visit.field("days"),
                visit.field("budget"),
                visit.field("dishes"),
                visit.field("sessions"),
                new DishesWanted(List.of(), chosen(visit, dishes, "with"), chosen(visit, dishes, "without"), List.of()),
                changed);
    }

    private static List<String> chosen(Visit visit, List<String> dishes, String wish) {
        return dishes.stream()
                .filter(dish -> visit.field("dish-" + dish).equals(wish))
                .toList();
    }

    DeskWish withEaters(List<String> other) {
        return new DeskWish(other, days, budget, mostDishes, sessions, dishes, changed);
    }

    String wishFor(String dish) {
        if (dishes.with().contains(dish)) {
            return "with";
        }
        return dishes.without().contains(dish) ? "without" : "any";
    }

    /** What is changed of an eater. */
    EaterWish changedOf(String eater) {
        return changed.getOrDefault(eater, EaterWish.AS_WRITTEN);
    }

    /** None when it can be asked. */
    List<Trouble> troubles() {
        List<Trouble> troubles = new ArrayList<>();
        if (eaters.isEmpty()) {
            troubles.add(new Trouble("eaters", "Choose who eats."));
        } else if (eaters.size() > MOST_EATERS) {
            troubles.add(new Trouble("eaters", "Choose at most " + MOST_EATERS + " eaters."));
        }
        whole(troubles, "days", days, "Days", PlanRequest.MOST_DAYS);
        whole(troubles, "dishes", mostDishes, "Most dishes", MOST_DISHES);
        whole(troubles, "sessions", sessions, "Cooking sessions", Cooking.MOST_SESSIONS);
        if (!budget.isEmpty() && !budget.matches("[0-9]{1,9}([.][0-9]{1,4})?")) {
            troubles.add(new Trouble("budget", "Enter the most to spend as a number such as 60 or 60.50."));
        }
        eaters.forEach(eater -> troubles.addAll(changedOf(eater).troubles(eater)));
        if (troubles.isEmpty() && Integer.parseInt(sessions) > Integer.parseInt(days)) {
            troubles.add(new Trouble(
                    "sessions", "Each cooking session needs a day of its own: enter at most " + days + "."));
        }
        if (troubles.isEmpty() && !dishes.with().isEmpty() && Integer.parseInt(sessions) > 1) {
            troubles.add(new Trouble(
                    "dish-choice", "With several cooking sessions each chooses its own dishes: keep none in."));
        }
        return troubles;
    }

    private static void whole(List<Trouble> troubles, String field, String typed, String what, int most) {
        if (!typed.matches("[0-9]{1,3}") || Integer.parseInt(typed) < 1 || Integer.parseInt(typed) > most) {
            troubles.add(new Trouble(field, what + ": enter a whole number from 1 to " + most + "."));
        }
    }

    /** Only without troubles. */
    Sliders sliders(PlanQuestion question) {
        Sliders sliders = Sliders.of(question);
        for (String eater : eaters) {
            sliders = sliders.withEater(eater, changedOf(eater).sliders());
        }
        return sliders;
    }

    /** Only without troubles. */
    PlanQuestion question() {
        return new PlanQuestion(
                eaters,
                Integer.parseInt(days),
                budget.isEmpty() ? Optional.empty() : Optional.of(new TypedSum(new BigDecimal(budget))),
                new CookingWanted(
                        dishes,
                        DishNumber.atMost(Integer.parseInt(mostDishes)),
                        Integer.parseInt(sessions),
                        false,
                        false),
                List.of(),
                new PlanQuestion.HowLong(PATIENCE),
                InsightWanted.NONE);
    }
}

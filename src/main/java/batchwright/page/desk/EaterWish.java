package batchwright.page.desk;

import batchwright.app.Refused;
import batchwright.app.desk.EaterSliders;
import batchwright.food.Food;
import batchwright.page.Visit;
import batchwright.report.html.web.Trouble;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Pattern;

/**
 * What is changed of an eater at the desk, as typed; an empty field is as the profile says.
 *
 * @param goalKcal surplus, or deficit with a minus [kcal a day]
 * @param protein at least [g per kg of body weight a day]
 * @param boxes a day
 * @param snacks foods that are liked; empty when they are those of the profile
 */
record EaterWish(String goalKcal, String protein, String boxes, Optional<Set<String>> snacks) {
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,4}");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,2}([.][0-9]{1,3})?");

    static final EaterWish AS_WRITTEN = new EaterWish("", "", "", Optional.empty());

    static EaterWish of(Visit visit, WrittenEater eater) {
        String id = eater.id();
        return new EaterWish(
                visit.field("goal-" + id).replace('\u2212', '-'),
                visit.field("protein-" + id),
                visit.field("boxes-" + id),
                visit.field("snacks-" + id).isEmpty() ? Optional.empty() : liked(visit.fields("snack-" + id), eater));
    }

    private static Optional<Set<String>> liked(List<String> ticked, WrittenEater eater) {
        Set<String> foods = new LinkedHashSet<>();
        eater.snacks().stream().map(Food::id).filter(ticked::contains).forEach(foods::add);
        return foods.equals(eater.likes()) ? Optional.empty() : Optional.of(foods);
    }

    /** None when it can be asked. */
    List<Trouble> troubles(String id) {
        List<Trouble> troubles = new ArrayList<>();
        wrong(goalKcal, WHOLE, "Enter a whole number of kcal a day, such as 300 or -300.", EaterWish::goal)
                .ifPresent(says -> troubles.add(new Trouble("goal-" + id, says)));
        wrong(protein, DECIMAL, "Enter grams per kg of body weight, such as 1.8.", EaterWish::protein)
                .ifPresent(says -> troubles.add(new Trouble("protein-" + id, says)));
        wrong(boxes, WHOLE, "Enter a whole number of boxes a day.", EaterWish::boxes)
                .ifPresent(says -> troubles.add(new Trouble("boxes-" + id, says)));
        return troubles;
    }

    private static Optional<String> wrong(
            String typed, Pattern form, String expected, BiFunction<EaterSliders, String, EaterSliders> move) {
        if (!typed.isEmpty() && !form.matcher(typed).matches()) {
            return Optional.of(expected);
        }
        try {
            move.apply(EaterSliders.AS_WRITTEN, typed).check();
            return Optional.empty();
        } catch (Refused no) {
            return Optional.of(DeskBoard.sentence(no.faults().get(0)));
        }
    }

    private static EaterSliders goal(EaterSliders sliders, String typed) {
        return typed.isEmpty() ? sliders : sliders.withGoalKcal(Integer.parseInt(typed));
    }

    private static EaterSliders protein(EaterSliders sliders, String typed) {
        return typed.isEmpty() ? sliders : sliders.withProtein(Double.parseDouble(typed));
    }

    private static EaterSliders boxes(EaterSliders sliders, String typed) {
        return typed.isEmpty() ? sliders : sliders.withContainersADay(Integer.parseInt(typed));
    }

    /** Only without troubles. */
    EaterSliders sliders() {
        EaterSliders figures = boxes(protein(goal(EaterSliders.AS_WRITTEN, goalKcal), protein), boxes);
        return snacks.map(figures::withSnacks).orElse(figures);
    }
}

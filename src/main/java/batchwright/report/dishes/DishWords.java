package batchwright.report.dishes;

import batchwright.food.Dish;
import batchwright.food.Step;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** A request for containers of one dish, in words and as a command. */
final class DishWords {
    private DishWords() {}

    /** 679-721 kcal and at least 45 g protein; empty when nothing is wished. */
    static String wish(ContainerWish wish) {
        List<String> words = new ArrayList<>();
        wish.energy().ifPresent(band -> words.add(band(band) + " kcal"));
        wish.proteinLeastG().ifPresent(least -> words.add("at least " + number(least) + " g protein"));
        wish.fatMostG().ifPresent(most -> words.add("at most " + number(most) + " g fat"));
        return list(words);
    }

    static String band(EnergyBand band) {
        String least = number(band.leastKcal());
        String most = number(band.mostKcal());
        return least.equals(most) ? least : least + "-" + most;
    }

    /** "with pasta and without parmesan" behind something; empty when the parts are free. */
    static String parts(DishRequest request, String before) {
        List<String> words = new ArrayList<>();
        new TreeSet<>(request.with()).forEach(part -> words.add("with " + part));
        new TreeSet<>(request.without()).forEach(part -> words.add("without " + part));
        return words.isEmpty() ? "" : before + list(words);
    }

    private static String list(List<String> words) {
        int last = words.size() - 1;
        return last <= 0
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** What to type for it, without the program's name. */
    static String command(DishRequest request) {
        var line = new StringBuilder("dishes " + request.dish().id() + " --containers " + request.containers());
        request.wish().energy().ifPresent(band -> line.append(energy(band)));
        request.wish()
                .proteinLeastG()
                .ifPresent(least -> line.append(" --protein ").append(number(least)));
        request.wish().fatMostG().ifPresent(most -> line.append(" --fat ").append(number(most)));
        new TreeSet<>(request.with()).forEach(part -> line.append(" --with ").append(word(part)));
        new TreeSet<>(request.without())
                .forEach(part -> line.append(" --without ").append(word(part)));
        line.append(request.pantry() ? "" : " --no-pantry");
        request.budget()
                .ifPresent(budget -> line.append(" --budget ")
                        .append(request.kitchen().currency().text(budget)));
        return line.toString();
    }

    private static String energy(EnergyBand band) {
        return band.percent()
                .map(percent -> " --kcal " + number(band.aimKcal())
                        + (percent.compareTo(EnergyBand.USUAL_PERCENT) == 0 ? "" : " --band " + number(percent)))
                .orElseGet(() -> " --kcal " + number(band.leastKcal()) + "-" + number(band.mostKcal()));
    }

    /** A part's name as one word. */
    private static String word(String part) {
        return part.replace(' ', '_');
    }

    private static String number(BigDecimal value) {
        return Show.plainText(value, 1);
    }

    /** Says that a kitchen cannot cook it, and why. */
    static String obstacle(Dish dish, Step step) {
        return "Not in this kitchen: step " + (dish.steps().indexOf(step) + 1) + " needs " + step.needs()
                + ", and foods/kitchen.yaml has none.";
    }
}

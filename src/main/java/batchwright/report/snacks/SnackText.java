package batchwright.report.snacks;

import batchwright.answer.DishAllergens;
import batchwright.answer.SnackAnswers;
import batchwright.food.Allergen;
import batchwright.needs.Needs;
import batchwright.needs.caution.Caution;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Snacks for people: the best one in a sentence, the others in a table. */
public final class SnackText {
    private static final Map<String, String> READINGS = Map.of(
            "energy", "least energy over the gap",
            "pieces", "fewest pieces",
            "cost", "least cost",
            "grams", "least weight");
    private final SnackAnswers answers;
    private final Page page = new Page();

    private SnackText(SnackAnswers answers) {
        this.answers = answers;
    }

    public static String of(SnackAnswers answers) {
        return new SnackText(answers).text();
    }

    private String text() {
        answers.stopped()
                .ifPresentOrElse(
                        this::stopped, () -> answers.shortfall().ifPresentOrElse(this::shortfall, this::found));
        return page.toString();
    }

    private void stopped(Needs needs) {
        page.paragraph("No snack for " + needs.eater().name() + ": a caution stops it.");
        needs.cautions().stream().filter(Caution::stopsPlanning).forEach(caution -> page.item(caution.text()));
    }

    private void found() {
        SnackAnswers.Offer best = answers.found().get(0);
        if (best.items().isEmpty()) {
            page.line("Nothing to add: there is no calorie gap.");
            return;
        }
        answers.atHome().ifPresent(home -> page.paragraph("From home: " + says(home) + "."));
        page.paragraph((answers.atHome().isPresent() ? "Of all that is on offer: " : "") + says(best) + ".");
        page.gap();
        page.paragraph("Smallest means "
                + READINGS.getOrDefault(answers.ask().by(), answers.ask().by()) + ": " + asked()
                + ". Other readings: --by energy, pieces, cost, grams.");
        if (answers.found().size() > 1) {
            page.heading("Next best");
            page.table(others());
        }
        notes();
    }

    private TextTable others() {
        var table = new TextTable("  ")
                .left("snack")
                .right("kcal")
                .right("over")
                .right("protein\ng")
                .right("cost\n" + answers.currency());
        for (SnackAnswers.Offer offer :
                answers.found().subList(1, answers.found().size())) {
            table.row(
                    Show.snacks(offer.items()),
                    Show.whole(offer.kcal()),
                    Show.whole(offer.overKcal()),
                    Show.oneDecimal(offer.proteinG()),
                    cost(offer));
        }
        return table;
    }

    private String says(SnackAnswers.Offer offer) {
        String over = offer.overKcal().signum() < 0
                ? Show.whole(offer.overKcal().negate()) + " short"
                : Show.whole(offer.overKcal()) + " over";
        return Show.snacks(offer.items()) + ": " + Show.whole(offer.kcal()) + " kcal, " + over + ", "
                + Show.oneDecimal(offer.proteinG()) + " g protein, " + cost(offer) + " " + answers.currency();
    }

    private String cost(SnackAnswers.Offer offer) {
        return answers.currency().text(offer.costMinor());
    }

    private String asked() {
        SnackAnswers.Ask ask = answers.ask();
        return "at least " + Show.plainText(ask.kcal(), 1) + " kcal"
                + (ask.proteinG().signum() > 0 ? " and " + Show.plainText(ask.proteinG(), 1) + " g protein" : "")
                + ask.mostKcal()
                        .map(m -> ", at most " + Show.plainText(m, 1) + " kcal")
                        .orElse("")
                + ask.budget()
                        .map(b -> ", at most " + Show.money(b, answers.currency()))
                        .orElse("")
                + ", up to " + Show.count(ask.kinds(), "kind", "kinds")
                + (ask.fromHome() ? ", from what is at home" : "");
    }

    private void shortfall(SnackAnswers.Shortfall shortfall) {
        page.paragraph("No snack does this: " + reason(shortfall) + ".");
        page.gap();
        page.paragraph("Asked: " + asked() + ".");
        if (!shortfall.closest().items().isEmpty()) {
            page.paragraph("Nearest: " + says(shortfall.closest()) + ".");
        }
        shortfall.over().ifPresent(over -> page.paragraph("Beyond the most energy: " + says(over) + "."));
        page.paragraph("Try more --kinds, a larger --budget or --most, or a smaller gap.");
        notes();
    }

    private static String reason(SnackAnswers.Shortfall shortfall) {
        BigDecimal kcal = shortfall.kcalShort();
        return switch (shortfall.missing()) {
            case ENERGY -> Show.whole(kcal) + " kcal short";
            case WINDOW -> "none lands between; the nearest below is " + Show.whole(kcal) + " kcal short";
            case PROTEIN -> Show.oneDecimal(shortfall.proteinShortG()) + " g protein short";
        };
    }

    private void notes() {
        page.gap();
        page.paragraph("Cost is the share of the cheapest pack, also for what is at home.");
        page.paragraph("Allergens in the snacks above: " + DishAllergens.named(allergens())
                + ". Labels decide: read them. --for EATER leaves out what an eater avoids.");
    }

    private Set<Allergen> allergens() {
        var all = EnumSet.noneOf(Allergen.class);
        Stream<SnackAnswers.Offer> shown = Stream.concat(
                Stream.concat(answers.atHome().stream(), answers.found().stream()),
                answers.shortfall().stream().flatMap(s -> Stream.concat(Stream.of(s.closest()), s.over().stream())));
        shown.flatMap(offer -> offer.items().stream())
                .forEach(snack -> all.addAll(snack.measure().food().allergens()));
        return all;
    }
}

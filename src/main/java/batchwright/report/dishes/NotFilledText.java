package batchwright.report.dishes;

import batchwright.answer.FilledDish;
import batchwright.food.Nutrient;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishAnswer;
import batchwright.plan.DishHint;
import batchwright.plan.DishHint.Kind;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.plan.Reach;
import batchwright.quantity.Money;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Why there are no such containers, and what is possible, each with the command to try. */
final class NotFilledText {
    private static final int MOST_DECIMALS = 3;

    private final FilledDish filled;
    private final Commands commands;
    private final DishRequest request;
    private final Page page;

    NotFilledText(FilledDish filled, Commands commands, Page page) {
        this.commands = commands;
        this.filled = filled;
        this.request = filled.request();
        this.page = page;
    }

    void write() {
        if (filled.answer().status() == DishAnswer.Status.NOT_PROVEN) {
            page.paragraph(
                    "No containers of " + name() + " found in the time given, and no proof that there are none.");
            return;
        }
        page.paragraph(why());
        List<DishHint> hints = filled.answer().hints();
        if (!hints.isEmpty()) {
            page.gap().line("What is possible:");
            hints.forEach(hint -> {
                page.item(says(hint));
                hint.tryThis()
                        .ifPresent(other ->
                                page.paragraph("    ", "      ", "Try: " + commands.line(DishWords.command(other))));
            });
        }
        String parts = DishWords.parts(request, ", ");
        page.gap()
                .paragraph("A container of it" + parts + (parts.isEmpty() ? "" : ",") + " holds "
                        + range(Nutrient.ENERGY) + " kcal, " + range(Nutrient.PROTEIN) + " g protein and "
                        + range(Nutrient.FAT) + " g fat.");
    }

    private String name() {
        return request.dish().name() + " (" + request.dish().id() + ")";
    }

    private String range(Nutrient nutrient) {
        Reach reach = filled.reach(nutrient);
        String least = Show.whole(reach.least());
        String most = Show.whole(reach.most());
        return least.equals(most) ? least : least + " to " + most;
    }

    private String why() {
        String each = DishWords.wish(request.wish()) + DishWords.parts(request, ", ");
        String many = Show.count(request.containers(), "container", "containers") + " of " + name();
        Optional<DishHint> budget = hint(Kind.BUDGET);
        if (budget.isPresent()) {
            return many + ", each " + each + ", " + (request.containers() == 1 ? "costs" : "cost") + " at least "
                    + money(budget.get().reached()) + ", more than the budget of "
                    + request.budget().map(request.kitchen().currency()::text).orElse("") + ".";
        }
        if (hint(Kind.CONTAINERS).isPresent() || hint(Kind.NOT_SOLD).isPresent()) {
            return "Shops and pantry do not have enough for " + many + ", each " + each + ".";
        }
        return "No container of " + name() + " has " + each + ".";
    }

    private Optional<DishHint> hint(Kind kind) {
        return filled.answer().hints().stream().filter(h -> h.kind() == kind).findFirst();
    }

    private String money(BigDecimal minor) {
        return Show.money(new Money(minor.longValueExact()), request.kitchen().currency());
    }

    private String says(DishHint hint) {
        boolean beyondBudget = request.budget().isPresent()
                && hint.tryThis().filter(r -> r.budget().isEmpty()).isPresent();
        return words(hint) + (beyondBudget ? ", whatever it costs." : ".");
    }

    private String words(DishHint hint) {
        ContainerWish wish = request.wish();
        String figure = Show.whole(hint.reached());
        return switch (hint.kind()) {
            case MOST_PROTEIN, MOST_PROTEIN_FOR_MORE ->
                given(wish.withProtein(Optional.empty())) + "the most protein is " + grams(hint) + " g";
            case LEAST_FAT -> given(wish.withFat(Optional.empty())) + "the least fat is " + grams(hint) + " g";
            case ENERGY_ABOVE ->
                "The nearest above " + end(EnergyBand::mostKcal) + " kcal is " + beside(hint, EnergyBand::mostKcal)
                        + " kcal" + besidesEnergy();
            case ENERGY_BELOW ->
                "The nearest below " + end(EnergyBand::leastKcal) + " kcal is " + beside(hint, EnergyBand::leastKcal)
                        + " kcal" + besidesEnergy();
            case PART_FREE ->
                "If " + hint.what() + (request.with().contains(hint.what()) ? " may be left out" : " may be in")
                        + ", it is possible";
            case BUDGET -> "The budget has to be " + money(hint.reached());
            case CONTAINERS ->
                Show.count(hint.reached().intValueExact(), "container is", "containers are") + " possible"
                        + request.budget()
                                .map(b -> " within "
                                        + request.kitchen().currency().text(b))
                                .orElse("");
            case NOT_SOLD -> "No shop in foods/shop.csv sells " + hint.what() + ", and there is too little at home";
            case NEAREST ->
                "No change of one thing is enough. Nearest: " + figure + " kcal"
                        + hint.tryThis()
                                .flatMap(other -> other.wish().proteinLeastG())
                                .map(least -> " with " + Show.plainText(least, 1) + " g protein")
                                .orElse("")
                        + (wish.fatMostG().isPresent() ? ", whatever the fat" : "");
        };
    }

    /** Never rounded to a figure that nothing reaches. */
    private static String grams(DishHint hint) {
        return Show.oneDecimal(hint.reached());
    }

    private String end(Function<EnergyBand, BigDecimal> which) {
        return request.wish()
                .energy()
                .map(which)
                .map(kcal -> Show.plainText(kcal, 1))
                .orElse("");
    }

    /** With as many decimals as it takes to show that the figure differs from the end. */
    private String beside(DishHint hint, Function<EnergyBand, BigDecimal> which) {
        String end = end(which);
        return IntStream.rangeClosed(0, MOST_DECIMALS)
                .mapToObj(decimals -> Show.plainText(hint.reached(), decimals))
                .filter(figure -> !figure.equals(end))
                .findFirst()
                .orElse(end);
    }

    private String besidesEnergy() {
        String others = DishWords.wish(request.wish().withEnergy(Optional.empty()));
        return others.isEmpty() ? "" : ", with " + others;
    }

    /** "With 679-721 kcal ", or nothing; then the sentence goes on. */
    private static String given(ContainerWish others) {
        String words = DishWords.wish(others);
        return words.isEmpty() ? "Of all containers " : "With " + words + " ";
    }
}

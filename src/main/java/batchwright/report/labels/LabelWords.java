package batchwright.report.labels;

import batchwright.answer.DishAllergens;
import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Staple;
import batchwright.plan.Portion;
import batchwright.report.print.Dates;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** What stands on a label, line by line. */
public final class LabelWords {
    private static final String SAFE = "until steaming, 74 °C (165 °F) inside";
    /** Keeps a figure and its unit on one line. */
    private static final char NO_BREAK = '\u00a0';

    private final ContainerLabel label;
    private final LabelRounding.Rules rounding;
    private final LocalDate cooked;
    private final int firstDay;

    /** @param firstDay by which number the cooking day is called */
    public LabelWords(ContainerLabel label, LabelRounding.Rules rounding, LocalDate cooked, int firstDay) {
        this.label = label;
        this.rounding = rounding;
        this.cooked = cooked;
        this.firstDay = firstDay;
    }

    public String number() {
        return label.number() + " of " + label.of() + ", for day " + (label.day() + firstDay - 1) + ", "
                + Dates.shortly(eaten());
    }

    private LocalDate eaten() {
        return day(label.day());
    }

    private LocalDate day(int day) {
        return cooked.plusDays(day - 1L);
    }

    public String figures() {
        return rounding.of(label.fill().perContainer()).stream()
                        .map(f -> f.name() + " " + f.amount().replace(' ', NO_BREAK))
                        .collect(Collectors.joining(" · "))
                + " (" + rounding.tag() + ")";
    }

    /** What is in this container; what of the dish is left out of it is named too, as all is cooked in one kitchen. */
    public String allergens() {
        Set<Allergen> inside = EnumSet.noneOf(Allergen.class);
        label.fill().portions().stream()
                .filter(portion -> portion.rawGrams() > 0)
                .map(Portion::part)
                .flatMap(part -> part.mix().stream())
                .forEach(ingredient -> inside.addAll(ingredient.food().allergens()));
        label.dish().staples().stream().map(Staple::allergens).forEach(inside::addAll);
        Set<Allergen> outside = EnumSet.noneOf(Allergen.class);
        outside.addAll(label.dish().allergens());
        outside.removeAll(inside);
        return DishAllergens.named(inside)
                + (outside.isEmpty() ? "" : "; left out here: " + DishAllergens.named(outside));
    }

    public String cooked() {
        return "Cooked " + Dates.shortly(cooked) + ". ";
    }

    /** The date that matters. */
    public String by() {
        return label.isFrozen()
                ? "Freeze by " + Dates.shortly(cooked)
                : "Eat by " + Dates.shortly(day(label.dish().fridgeDays()));
    }

    /** What goes with that date. */
    public String then() {
        if (label.isFrozen()) {
            return ", −18 °C; thaw in the fridge, then eat within a day.";
        }
        return ", kept at 4 °C or colder"
                + (label.dish().fridgeDays() > Dish.ADVISED_FRIDGE_DAYS
                        ? "; published advice: by " + Dates.shortly(day(Dish.ADVISED_FRIDGE_DAYS)) + "."
                        : ".");
    }

    /** As the dish says it; the temperature is always named. */
    String reheat() {
        String says = label.dish().reheat();
        if (says.isEmpty()) {
            return reheatInShort();
        }
        return says.contains("74 C") ? says : says + " Reheat " + SAFE + ".";
    }

    static String reheatInShort() {
        return SAFE + ".";
    }
}

package batchwright.report.labels;

import batchwright.answer.DishAllergens;
import batchwright.answer.Thawing;
import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Staple;
import batchwright.plan.Portion;
import batchwright.report.labels.LabelLine.Role;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What stands on a label, paragraph by paragraph. */
public final class LabelWords {
    private static final String FRIDGE = "4\u00a0°C or colder";
    private static final String FREEZER = "−18\u00a0°C";
    /** Keeps a figure and its unit on one line. */
    private static final char NO_BREAK = '\u00a0';

    private static final String PROTEIN = "protein";
    /** A name is not cut to fewer. */
    private static final int LEAST_LETTERS = 8;

    private final ContainerLabel label;
    private final LabelRounding.Rules rounding;
    private final LocalDate cooked;
    private final int firstDay;
    private final Typeface face;

    /**
     * @param firstDay by which number the cooking day is called
     * @param face in which it is shown
     */
    public LabelWords(
            ContainerLabel label, LabelRounding.Rules rounding, LocalDate cooked, int firstDay, Typeface face) {
        this.label = label;
        this.rounding = rounding;
        this.cooked = cooked;
        this.firstDay = firstDay;
        this.face = face;
    }

    /** @param fits whether a paragraph is short enough for one line of type */
    List<LabelLine> lines(LabelLook look, Predicate<LabelLine> fits) {
        return lines(look, fits, dateForm(look, fits));
    }

    /** Which of the forms of its dates is the longest that fits on one line, from 0; those that look alike take the shortest of theirs. */
    int dateForm(LabelLook look, Predicate<LabelLine> fits) {
        List<String> forms = when(look.wording() == Wording.LEAST);
        int form = 0;
        while (form < forms.size() - 1 && !fits.test(new LabelLine(Role.WHEN, forms.get(form)))) {
            form++;
        }
        return form;
    }

    /** @param form of its dates, as {@link #dateForm} counts them */
    List<LabelLine> lines(LabelLook look, Predicate<LabelLine> fits, int form) {
        Wording wording = look.wording();
        boolean least = wording == Wording.LEAST;
        List<LabelLine> lines = new ArrayList<>();
        lines.add(name(Role.WHO, who(), wording.compareTo(Wording.BRIEF) >= 0, look, fits));
        lines.add(new LabelLine(Role.WHEN, when(least).get(form)));
        lines.add(name(Role.TITLE, look.cuts() ? titleOnOneLine(fits) : title(), look.cuts(), look, fits));
        if (label.isFrozen() && !least) {
            lines.add(new LabelLine(Role.THAW, thaw(wording)));
        }
        lines.add(new LabelLine(Role.STRONG, "Allergens: " + allergens()));
        smallPrint(wording, look.most()).forEach(text -> lines.add(new LabelLine(Role.PLAIN, text)));
        return lines;
    }

    private List<String> smallPrint(Wording wording, int most) {
        Reheating heat = new Reheating(label.dish(), label.fill().portions());
        return switch (wording) {
            case FULL -> List.of(amounts(most) + ".", figures(), count() + " " + storage(false) + ".", heat.inFull());
            case SHORT ->
                List.of(
                        amounts(most) + ".",
                        energyAndProtein() + ".",
                        count() + " " + storage(false) + ".",
                        "Reheat: " + heat.inShort() + ".");
            case BRIEF ->
                List.of(
                        amounts(most) + ". " + energyAndProtein() + ".",
                        count() + " " + storage(true) + "; reheat " + heat.inShort() + ".");
            case LEAST ->
                List.of(grams(cookedGrams()) + ", " + energyAndProtein() + "; " + count() + " " + storage(true)
                        + "; reheat " + heat.inLeast() + ".");
        };
    }

    /** The first that fits on one line, or else the last. */
    private static LabelLine first(Stream<LabelLine> lines, Predicate<LabelLine> fits) {
        List<LabelLine> all = lines.toList();
        return all.stream().filter(fits).findFirst().orElse(all.get(all.size() - 1));
    }

    /** Cut to the letters that a look allows, or to one line. */
    private static LabelLine name(
            Role role, String name, boolean onOneLine, LabelLook look, Predicate<LabelLine> fits) {
        int letters = Math.min(look.most(), name.codePointCount(0, name.length()));
        if (!onOneLine) {
            return new LabelLine(role, Shortened.to(letters, name));
        }
        return first(
                IntStream.iterate(letters, n -> n >= Math.min(letters, LEAST_LETTERS), n -> n - 1)
                        .mapToObj(n -> new LabelLine(role, Shortened.to(n, name))),
                fits);
    }

    /** What goes with a dish is left out before the dish is cut. */
    private String titleOnOneLine(Predicate<LabelLine> fits) {
        String whole = title();
        return fits.test(new LabelLine(Role.TITLE, whole)) ? whole : whole.split(" with ", 2)[0];
    }

    private String who() {
        return face.shows(label.eater()) ? label.eater() : "Eater " + label.eaterNumber();
    }

    private String title() {
        String title = DishTitle.of(label.dish(), label.fill().portions());
        return face.shows(title) ? title : label.dish().id();
    }

    /** The day on which it is to be eaten and the last one, at length and ever shorter. */
    private List<String> when(boolean least) {
        String by = Dates.shortly(eatBy());
        if (least && label.isFrozen()) {
            String thaw = Dates.shortly(thaws());
            return List.of(
                    "Thaw " + thaw + " · eat by " + by,
                    "Thaw " + dayOfMonth(thaw) + " · by " + by,
                    "Thaw " + weekday(thaw) + " · by " + by);
        }
        if (eaten().equals(eatBy())) {
            return List.of("Day " + dayNumber() + " · eat by " + by, "Eat by " + by, "by " + by);
        }
        String day = Dates.shortly(eaten());
        return List.of(
                "Day " + dayNumber() + ", " + day + " · eat by " + by,
                day + " · eat by " + by,
                weekday(day) + " · by " + by);
    }

    /** Thu, of Thu 3 Dec. */
    private static String weekday(String date) {
        return date.substring(0, date.indexOf(' '));
    }

    /** Thu 3, of Thu 3 Dec. */
    private static String dayOfMonth(String date) {
        return date.substring(0, date.lastIndexOf(' '));
    }

    private LocalDate eaten() {
        return day(label.day());
    }

    /** In the evening of that day. */
    private LocalDate thaws() {
        return eaten().minusDays(Thawing.evenings(label.fill(), label.day()));
    }

    private int dayNumber() {
        return label.day() + firstDay - 1;
    }

    /** What was frozen is eaten within a day of thawing. */
    private LocalDate eatBy() {
        return label.isFrozen() ? eaten() : day(label.dish().fridgeDays());
    }

    private LocalDate day(int day) {
        return cooked.plusDays(day - 1L);
    }

    private String thaw(Wording wording) {
        String evening = Dates.shortly(thaws());
        return wording == Wording.BRIEF
                ? "Frozen: thaw from " + evening
                : "Frozen: to the fridge in the evening of " + evening;
    }

    private String amounts(int most) {
        List<Portion> inside = label.inside().toList();
        return Show.capital(inside.stream()
                        .map(p -> Shortened.to(most, p.part().name()) + " " + amount(p))
                        .collect(Collectors.joining(", ")))
                + (inside.size() > 1 ? "; in all " + grams(cookedGrams()) : "");
    }

    private int cookedGrams() {
        return label.inside().mapToInt(Portion::cookedGrams).sum();
    }

    private static String amount(Portion portion) {
        return (portion.part().pieces() ? portion.pieces() + "\u00a0×, " : "") + grams(portion.cookedGrams());
    }

    private static String grams(int grams) {
        return grams + "\u00a0g";
    }

    private String figures() {
        return Show.capital(rounding.of(label.fill().perContainer()).stream()
                        .map(f -> f.name() + " " + f.amount().replace(' ', NO_BREAK))
                        .collect(Collectors.joining(" · ")))
                + " (" + rounding.tag() + ")";
    }

    private String energyAndProtein() {
        List<LabelRounding.Figure> figures = rounding.of(label.fill().perContainer());
        Stream<String> protein = figures.stream()
                .filter(figure -> figure.name().equals(PROTEIN))
                .map(figure -> figure.amount() + " " + PROTEIN);
        return Stream.concat(Stream.of(figures.get(0).amount()), protein)
                .map(text -> text.replace(' ', NO_BREAK))
                .collect(Collectors.joining(", "));
    }

    private String count() {
        return label.number() + " of " + label.of() + ", cooked " + Dates.shortly(cooked) + ".";
    }

    private String storage(boolean brief) {
        if (label.isFrozen()) {
            return brief ? "Freezer " + FREEZER : "Freeze that day, " + FREEZER + "; eat within a day of thawing";
        }
        boolean longer = label.dish().fridgeDays() > Dish.ADVISED_FRIDGE_DAYS;
        String advised = Dates.shortly(day(Dish.ADVISED_FRIDGE_DAYS));
        return (brief ? "Fridge " : "In the fridge, ") + FRIDGE + (longer ? "; published advice: by " + advised : "");
    }

    /** What is in this container; what of the dish is left out of it is named too, as all is cooked in one kitchen. */
    private String allergens() {
        Set<Allergen> inside = EnumSet.noneOf(Allergen.class);
        label.inside()
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
}

package batchwright.report.book;

import batchwright.answer.Today;
import batchwright.answer.Today.Due;
import batchwright.answer.Today.ForEater;
import batchwright.answer.Today.SpoilsSoon;
import batchwright.book.BoxesLeft;
import batchwright.book.Event.Place;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A day in a few lines: what to eat, then what to do, then tomorrow. */
public final class TodayText {
    private final Today today;
    private final Page page = new Page();

    private TodayText(Today today) {
        this.today = today;
    }

    public static String of(Today today) {
        return new TodayText(today).text();
    }

    private String text() {
        page.paragraph(head());
        today.eaters()
                .forEach(eater -> eater.today()
                        .ifPresentOrElse(
                                day -> item("Eat", eater.eater() + ": " + planned(day) + soFar(eater)),
                                () -> item("Eat first", boxes(eater.eater()))));
        due(Due.Kind.COOK, "Cook");
        due(Due.Kind.FREEZE, "Freeze");
        due(Due.Kind.THAW, "Thaw tonight");
        due(Due.Kind.PAST, "Throw away, past its day");
        spoils(
                "Past its date, in no plan, not to be trusted",
                spoils -> spoils.useBy().isBefore(today.day()),
                "since");
        spoils("Use up", spoils -> !spoils.useBy().isBefore(today.day()), "by");
        today.eaters()
                .forEach(eater -> item(
                        "Tomorrow",
                        eater.tomorrow()
                                .map(day -> eater.eater() + ": " + planned(day))
                                .orElse("")));
        today.notes().forEach(page::item);
        return page.toString();
    }

    private void spoils(String what, Predicate<SpoilsSoon> which, String when) {
        item(
                what,
                today.useUp().stream()
                        .filter(which)
                        .map(spoils -> "%s g %s %s %s"
                                .formatted(
                                        Show.whole(spoils.food().grams()),
                                        spoils.food().food(),
                                        when,
                                        Dates.shortly(spoils.useBy())))
                        .collect(Collectors.joining(", ")));
    }

    private String head() {
        String day = Dates.inFull(today.day());
        return today.plan()
                .map(plan -> "%s: day %s of %s of the plan of %s."
                        .formatted(day, plan.number(), plan.days(), Dates.shortly(plan.cookingDay())))
                .orElse(day + ": no plan was kept for this day.");
    }

    private void item(String what, String says) {
        if (!says.isEmpty()) {
            page.paragraph("  ", "    ", what + ": " + says + ".");
        }
    }

    private void due(Due.Kind kind, String what) {
        Function<Due, String> says = due -> kind == Due.Kind.COOK ? due.what() : due.count() + " x " + due.what();
        item(
                what,
                today.due().stream().filter(due -> due.kind() == kind).map(says).collect(Collectors.joining(", ")));
    }

    private static String planned(EatersDay day) {
        List<String> things = new ArrayList<>();
        day.boxes().forEach(box -> things.add(box(box)));
        day.snacks().forEach(snack -> things.add(snack(snack)));
        return String.join(" + ", things) + "; " + Show.whole(day.kcal()) + " kcal";
    }

    private static String box(PlannedBox box) {
        return box.count() + " x " + box.dish() + (box.frozen() ? " (frozen)" : "");
    }

    private static String snack(PlannedSnack snack) {
        return "%s %s %s (%s g)"
                .formatted(snack.count(), snack.measure(), snack.food(), Show.plainText(snack.grams(), 1));
    }

    private static String soFar(ForEater eater) {
        String closed = eater.closed() ? ", and that was all" : "";
        return eater.eaten().compareTo(BigDecimal.ZERO) == 0
                ? closed
                : ". Eaten so far: " + Show.whole(eater.eaten()) + " kcal" + closed;
    }

    /** What is left for an eater for whom nothing is planned. */
    private String boxes(String eater) {
        String left = today.boxes().stream()
                .filter(lot -> lot.boxes().eater().equals(eater) && !lot.until().isBefore(today.day()))
                .map(TodayText::lot)
                .collect(Collectors.joining(", "));
        return left.isEmpty() ? "" : eater + ": " + left;
    }

    /** 2 x lentil_ragu, fridge, until Wed 2 Dec. */
    static String lot(BoxesLeft.Lot lot) {
        return "%s x %s in the %s until %s"
                .formatted(lot.count(), lot.boxes().dish(), place(lot.place()), Dates.shortly(lot.until()));
    }

    static String place(Place place) {
        return place == Place.FRIDGE ? "fridge" : "freezer";
    }
}

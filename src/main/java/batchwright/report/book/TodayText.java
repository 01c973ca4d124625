package batchwright.report.book;

import batchwright.answer.Today;
import batchwright.answer.Today.DayByBook;
import batchwright.answer.Today.Due;
import batchwright.answer.Today.ForEater;
import batchwright.answer.Today.Lacking;
import batchwright.answer.Today.SpoilsSoon;
import batchwright.book.BoxesLeft;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.food.MeasureName;
import batchwright.report.print.Commands;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A day in a few lines: what to eat, then what to do, then tomorrow. */
public final class TodayText {
    /** Less is no gap [kcal]. */
    private static final BigDecimal NO_GAP = BigDecimal.valueOf(50);

    private final Today today;
    private final Page page = new Page();

    private final Commands commands;

    private TodayText(Today today, Commands commands) {
        this.today = today;
        this.commands = commands;
    }

    public static String of(Today today, Commands commands) {
        return new TodayText(today, commands).text();
    }

    private String text() {
        page.paragraph(head());
        today.eaters().forEach(this::eat);
        due(Due.Kind.COOK, "Cook");
        due(Due.Kind.FREEZE, "Freeze");
        due(Due.Kind.THAW, "Thaw tonight");
        due(Due.Kind.PAST, "Throw away, past its day");
        spoils(
                "Past its date, in no plan, not to be trusted",
                spoils -> spoils.useBy().isBefore(today.day()),
                "since");
        spoils("Use up", spoils -> !spoils.useBy().isBefore(today.day()), "by");
        today.eaters().forEach(this::besides);
        today.eaters()
                .forEach(eater -> eater.tomorrow()
                        .filter(day -> !isNothing(day))
                        .ifPresent(day -> item("Tomorrow", eater.eater() + ": " + left(day))));
        today.notes().forEach(page::item);
        return page.toString();
    }

    private void eat(ForEater eater) {
        if (eater.today().isEmpty()) {
            if (eater.tomorrow().isEmpty()) {
                item("Eat first", lots(eater));
            }
            return;
        }
        DayByBook day = eater.today().get();
        String planned = Show.whole(day.planned().kcal());
        String eaten = Show.whole(eater.eaten().kcal());
        if (eater.eaten().closed() || isNothing(day)) {
            String end = eater.eaten().closed() ? ", and that was all" : ", and nothing of the plan is left";
            item("Eaten", "%s: %s of %s planned kcal%s".formatted(eater.eater(), eaten, planned, end));
            return;
        }
        String soFar = eater.eaten().anything()
                ? ". Eaten so far: %s of %s planned kcal%s".formatted(eaten, planned, over(eater, day))
                : "";
        item("Eat", eater.eater() + ": " + left(day) + soFar);
    }

    /** What was eaten otherwise and the rest of the plan may be more than the day was planned with. */
    private static String over(ForEater eater, DayByBook day) {
        BigDecimal over = gap(eater, day).negate();
        return over.compareTo(NO_GAP) > 0 ? "; with all of this %s kcal more".formatted(Show.whole(over)) : "";
    }

    /** What is missing to the energy of the plan. */
    private static BigDecimal gap(ForEater eater, DayByBook day) {
        return day.planned().kcal().subtract(eater.eaten().kcal()).subtract(day.kcal());
    }

    /** What does not fit the plan: containers that are not there, and those that nobody planned with. */
    private void besides(ForEater eater) {
        List<Lacking> lacking = new ArrayList<>();
        eater.today().filter(day -> !eater.eaten().closed()).ifPresent(day -> lacking.addAll(day.lacking()));
        eater.tomorrow().ifPresent(day -> lacking.addAll(day.lacking()));
        lacking.addAll(eater.lacking());
        if (!lacking.isEmpty()) {
            String days = lacking.stream()
                    .map(each -> "%s x %s %s (%s kcal)"
                            .formatted(each.count(), each.dish(), on(each), Show.whole(each.kcal())))
                    .collect(Collectors.joining(", "));
            item("Planned, but not there", eater.eater() + ": " + days + closing(eater));
        }
        if (eater.today().isPresent() || eater.tomorrow().isPresent()) {
            item("In no plan", lots(eater));
        }
    }

    private String closing(ForEater eater) {
        Optional<BigDecimal> gap = eater.today()
                .filter(day -> !eater.eaten().closed() && !day.lacking().isEmpty())
                .map(day -> gap(eater, day))
                .filter(kcal -> kcal.compareTo(NO_GAP) > 0);
        return gap.map(kcal ->
                        ". For today: " + commands.line("snack %s --for %s".formatted(Show.whole(kcal), eater.eater())))
                .orElse("");
    }

    private String on(Lacking lacking) {
        if (lacking.day().equals(today.day())) {
            return "today";
        }
        return lacking.day().equals(today.day().plusDays(1)) ? "tomorrow" : "on " + date(lacking.day());
    }

    private String date(LocalDate day) {
        return Dates.shortly(day, today.day());
    }

    private static boolean isNothing(DayByBook day) {
        return day.boxes().isEmpty() && day.snacks().isEmpty();
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
                                        date(spoils.useBy())))
                        .collect(Collectors.joining(", ")));
    }

    private String head() {
        String day = Dates.inFull(today.day());
        return today.plan()
                .map(plan -> "%s: day %s of %s of the plan of %s."
                        .formatted(day, plan.number(), plan.days(), date(plan.cookingDay())))
                .orElse(day + ": no plan was kept for this day.");
    }

    private void item(String what, String says) {
        if (!says.isEmpty()) {
            page.paragraph("  ", "    ", what + ": " + says + ".");
        }
    }

    private void due(Due.Kind kind, String what) {
        item(
                what,
                today.due().stream()
                        .filter(due -> due.kind() == kind)
                        .map(TodayText::due)
                        .collect(Collectors.joining(", ")));
    }

    private static String due(Due due) {
        String count = due.kind() == Due.Kind.COOK ? due.what() : due.count() + " x " + due.what();
        String whose = due.eater().map(eater -> " for " + eater).orElse("");
        return count
                + whose
                + due.from()
                        .filter(place -> due.kind() == Due.Kind.PAST)
                        .map(place -> " in the " + place.word())
                        .orElse("");
    }

    private static String left(DayByBook day) {
        List<String> things = new ArrayList<>();
        day.boxes().forEach(box -> things.add(box(box, day.planned().eater())));
        day.snacks().forEach(snack -> things.add(snack(snack)));
        return String.join(" + ", things) + "; " + Show.whole(day.kcal()) + " kcal";
    }

    private static String box(PlannedBox box, String eater) {
        String whose = box.of(eater).equals(eater) ? "" : " of " + box.of(eater);
        return box.count() + " x " + box.dish() + whose + (box.frozen() ? " (frozen)" : "");
    }

    private static String snack(PlannedSnack snack) {
        return "%s %s (%s g)"
                .formatted(
                        MeasureName.counted(snack.count(), snack.measure()),
                        snack.food(),
                        Show.plainText(snack.grams(), 1));
    }

    /** Containers that no plan wants. */
    private String lots(ForEater eater) {
        String left = eater.over().stream().map(lot -> lot(lot, today.day())).collect(Collectors.joining(", "));
        return left.isEmpty() ? "" : eater.eater() + ": " + left;
    }

    /** 2 x lentil_ragu in the fridge until Wed 2 Dec. */
    static String lot(BoxesLeft.Lot lot, LocalDate today) {
        return "%s x %s in the %s%s until %s"
                .formatted(
                        lot.count(),
                        lot.boxes().dish(),
                        lot.place().word(),
                        lot.thawed() ? ", thawed," : "",
                        Dates.shortly(lot.until(), today));
    }
}

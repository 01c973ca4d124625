package batchwright.report.plan;

import batchwright.food.Dish;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What each eater eats on each day, and how it compares with the target. */
final class DaysText {
    private final Session session;
    private final Page page;

    DaysText(Session session, Page page) {
        this.session = session;
        this.page = page;
    }

    void write() {
        session.eaters().forEach(this::eater);
    }

    private void eater(EaterDays eater) {
        page.heading("DAYS: " + eater.seat().eater().name());
        page.gap();
        eats(eater.days());
        page.gap();
        new DaysTable(session, eater).of(page.width()).forEach(table -> {
            page.table(table);
            Show.atLeastNote(page, table);
        });
        page.paragraph("  ", "  ", note(eater.seat().target()) + DaysTable.note(page.width()));
    }

    /** What figures and differences in the table mean. */
    private static String note(DayTarget target) {
        List<Limit> limits = target.limits(Scope.DAY);
        String bands = limits.stream()
                .filter(limit -> target.aim(limit).isPresent())
                .map(limit -> Show.capital(limit.measured().label()) + " may be "
                        + limit.range().says(limit.unit()))
                .collect(Collectors.joining("; "));
        List<String> floors = limits.stream()
                .filter(limit -> limit.range().most().isEmpty())
                .map(limit -> limit.measured().label())
                .toList();
        return bands + (floors.isEmpty() ? "" : "; " + String.join(", ", floors) + " are floors") + ". "
                + onAverage(target) + "+- is the difference from the target.";
    }

    private static String onAverage(DayTarget target) {
        List<Limit> limits = target.limits(Scope.MEAN_OF_DAYS);
        return limits.isEmpty()
                ? ""
                : "An average day holds " + limits.stream().map(Limit::says).collect(Collectors.joining(" and "))
                        + ". ";
    }

    /** Days in a row that are alike share a line. */
    private void eats(List<Day> days) {
        int from = 0;
        for (int i = 1; i <= days.size(); i++) {
            if (i == days.size() || !eats(session, days.get(i)).equals(eats(session, days.get(from)))) {
                String which = i - from == 1
                        ? "Day " + number(days.get(from))
                        : "Days " + number(days.get(from)) + "-" + number(days.get(i - 1));
                page.paragraph("  %-10s".formatted(which), " ".repeat(12), eats(session, days.get(from)));
                from = i;
            }
        }
    }

    private int number(Day day) {
        return day.day() + session.firstDay() - 1;
    }

    /** Which meal it is for, when it is for one only. */
    private static String meal(Dish dish) {
        return dish.kind() == Dish.Kind.MAIN ? "" : " (" + dish.kind().name().toLowerCase(Locale.ROOT) + ")";
    }

    /** Containers, snacks, and what is always eaten. */
    static String eats(Session session, Day day) {
        List<String> eats = new ArrayList<>();
        for (Serving serving : day.servings()) {
            String frozen = serving.from() == Serving.Storage.FREEZER ? " (frozen)" : "";
            String left = session.request()
                    .left()
                    .of(serving.dish())
                    .map(before -> before.isEaten() ? " (left)" : " (left, of " + before.eater() + ")")
                    .orElse("");
            eats.add(serving.count() + " x " + session.request().left().origin(serving.dish()) + meal(serving.dish())
                    + left + frozen);
        }
        for (Snack snack : day.snacks()) {
            eats.add(Show.snack(snack));
        }
        String always = day.always().isEmpty() ? "" : "; as always " + Show.snacks(day.always());
        return String.join(" + ", eats) + always;
    }
}

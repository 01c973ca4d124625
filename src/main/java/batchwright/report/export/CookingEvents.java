package batchwright.report.export;

import batchwright.answer.Freezing;
import batchwright.answer.Thawing;
import batchwright.food.Dish;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.report.cooking.Work;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import batchwright.schedule.Schedule;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What one cooking session puts into the calendar: the evening before, cooking, thawing, and the last day in the fridge. */
final class CookingEvents {
    /** When kitchens are tidied up: common practice. */
    private static final LocalTime EVENING = LocalTime.of(20, 0);

    private static final int EVENING_MINUTES = 15;

    private final Session session;
    private final Schedule orderOfWork;
    private final Optional<LocalTime> cookAt;
    private final LocalDate cooks;
    private final List<CalendarEvent> events = new ArrayList<>();

    CookingEvents(Session session, Schedule orderOfWork, Optional<LocalTime> cookAt) {
        this.session = session;
        this.orderOfWork = orderOfWork;
        this.cookAt = cookAt;
        this.cooks = session.cookingDay();
    }

    List<CalendarEvent> events() {
        eveningBefore();
        cook();
        for (int day = 2; day <= session.days(); day++) {
            thaw(day, 2);
            thaw(day, 1);
        }
        batches().forEach(this::eatBy);
        return events;
    }

    private List<Batch> batches() {
        return session.batches();
    }

    private void eveningBefore() {
        List<String> lines = new ArrayList<>();
        batches()
                .forEach(batch -> Work.dayBefore(batch)
                        .forEach(step -> lines.add(Isolated.name(batch.dish().name()) + ": " + step)));
        if (!lines.isEmpty()) {
            events.add(evening("evening-before/" + cooks, cooks, "Get ready to cook tomorrow", lines));
        }
    }

    private static CalendarEvent evening(String key, LocalDate before, String summary, List<String> lines) {
        return new CalendarEvent(key, before.minusDays(1), Optional.of(EVENING), EVENING_MINUTES, true, summary, lines);
    }

    private void cook() {
        int containers = batches().stream().mapToInt(Batch::containers).sum();
        Schedule schedule = orderOfWork;
        List<String> lines = new ArrayList<>();
        batches().forEach(batch -> {
            String freeze = Freezing.of(session, batch.dish()).says(session.firstDay());
            lines.add(batch.containers() + " x " + Isolated.name(batch.dish().name())
                    + (freeze.isEmpty() ? "" : "; " + freeze));
        });
        lines.add("About " + schedule.minutes() + " min, " + schedule.handsOnMinutes() + " min of it hands on.");
        lines.add("Cool in shallow containers; all of it into the fridge or freezer within 2 hours.");
        events.add(new CalendarEvent(
                "cook/" + cooks,
                cooks,
                cookAt,
                schedule.minutes(),
                false,
                "Cook " + Show.count(batches().size(), "dish", "dishes") + ", "
                        + Show.count(containers, "container", "containers"),
                lines));
    }

    /**
     * What is moved to the fridge so many evenings before a day.
     *
     * @param day of the session, the cooking day being 1
     */
    private void thaw(int day, int evenings) {
        List<String> lines = new ArrayList<>();
        int containers = 0;
        for (EaterDays eater : session.eaters()) {
            for (Serving serving : eater.days().get(day - 1).servings()) {
                Fill fill = session.fill(serving.dish(), eater.seat().eater());
                if (serving.from() == Serving.Storage.FREEZER && Thawing.evenings(fill, day) == evenings) {
                    containers += serving.count();
                    lines.add(serving.count() + " x "
                            + Isolated.name(serving.dish().name()) + " for "
                            + Isolated.name(eater.seat().eater().name()));
                }
            }
        }
        if (containers > 0) {
            lines.add("From the freezer into the fridge; eat within a day of thawing.");
            LocalDate eaten = cooks.plusDays(day - 1L);
            boolean slow = evenings > 1;
            String summary = "Thaw " + Show.count(containers, "container", "containers") + " for "
                    + (slow ? "the day after tomorrow" : "tomorrow");
            events.add(
                    evening("thaw/" + eaten + (slow ? "/slow" : ""), eaten.minusDays(evenings - 1L), summary, lines));
        }
    }

    /** Nothing when all of it is frozen. */
    private void eatBy(Batch batch) {
        Dish dish = batch.dish();
        OptionalInt last = lastDayFromFridge(dish);
        if (last.isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add("Cooked " + Dates.shortly(cooks) + ", kept at 4 °C or colder. By the plan the last is eaten on "
                + Dates.shortly(cooks.plusDays(last.getAsInt() - 1L)) + ".");
        if (dish.fridgeDays() > Dish.ADVISED_FRIDGE_DAYS) {
            lines.add("Published advice: by " + Dates.shortly(cooks.plusDays(Dish.ADVISED_FRIDGE_DAYS - 1L)) + ".");
        }
        events.add(CalendarEvent.onDay(
                "eat-by/" + cooks + "/" + dish.id(),
                cooks.plusDays(dish.fridgeDays() - 1L),
                true,
                "Eat by today: " + Isolated.name(dish.name()) + " from the fridge",
                lines));
    }

    private OptionalInt lastDayFromFridge(Dish dish) {
        return session.eaters().stream()
                .flatMap(eater -> eater.days().stream())
                .filter(day -> day.servings().stream()
                        .anyMatch(s -> s.dish().equals(dish) && s.from() == Serving.Storage.FRIDGE))
                .mapToInt(Day::day)
                .max();
    }
}

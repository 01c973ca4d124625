package batchwright.report.export;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.plan.UseUp;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The days of a plan as a calendar: cooking and the evening before it, what is eaten each day, when to thaw, the last day of
 * what is in the fridge. It holds foods and dates, and no figure of a body or its needs: others may see a calendar.
 */
public final class PlanCalendar {
    private final WholePlan plan;
    private final Optional<LocalTime> cookAt;
    private final List<CalendarEvent> events = new ArrayList<>();

    private PlanCalendar(WholePlan plan, Optional<LocalTime> cookAt) {
        this.plan = plan;
        this.cookAt = cookAt;
    }

    /** @param cookAt when each session starts; empty when that is not known: then cooking stands at a whole day */
    public static String of(WholePlan plan, Optional<LocalTime> cookAt) {
        var calendar = new PlanCalendar(plan, cookAt);
        plan.whole().sessions().forEach(calendar::session);
        return ICalendar.of(calendar.name(), plan.firstDay(), calendar.events);
    }

    /** Whether a file with this beginning is such a calendar. */
    public static boolean isIn(String beginning) {
        return beginning.lines().anyMatch(("PRODID:" + ICalendar.MAKER)::equals);
    }

    /** Plans for other eaters may stand in the same calendar. */
    private String name() {
        return plan.whole().needs().stream()
                .map(n -> n.eater().id())
                .sorted()
                .distinct()
                .collect(Collectors.joining("+"));
    }

    private void session(PlanAnswer one) {
        Session session = one.plan().orElseThrow().first();
        events.addAll(new CookingEvents(session, one.schedule().orElseThrow(), cookAt).events());
        session.eaters().forEach(eater -> eater.days().forEach(day -> eats(session, eater, day)));
        useUp(session);
    }

    private void eats(Session session, EaterDays eater, Day day) {
        LocalDate date = session.cookingDay().plusDays(day.day() - 1L);
        List<String> containers =
                day.servings().stream().map(PlanCalendar::containers).toList();
        List<String> snacks = Stream.concat(day.snacks().stream(), day.always().stream())
                .map(PlanCalendar::snack)
                .toList();
        events.add(CalendarEvent.onDay(
                "eat/" + date + "/" + eater.seat().eater().id(),
                date,
                false,
                Isolated.name(eater.seat().eater().name()) + ": "
                        + String.join(" + ", containers.isEmpty() ? snacks : containers),
                Stream.concat(containers.stream(), snacks.stream()).toList()));
    }

    private static String containers(Serving serving) {
        return serving.count() + " x " + Isolated.name(serving.dish().name())
                + (serving.from() == Serving.Storage.FREEZER ? " (thawed)" : "");
    }

    private static String snack(Snack snack) {
        String name = snack.measure().food().name();
        return Show.snack(snack).replace(name, Isolated.name(name));
    }

    /** What spoils at home and is not used. */
    private void useUp(Session session) {
        UseUp.of(session)
                .forEach(u -> events.add(CalendarEvent.onDay(
                        "use-up/" + u.useBy() + "/" + u.food().id(),
                        u.useBy(),
                        true,
                        "Use up by today: " + Isolated.name(u.food().name()),
                        List.of(Show.whole(u.grams()) + " g at home, which the plan does not use."))));
    }
}

package batchwright.report.plan;

import batchwright.answer.RestOfPlan;
import batchwright.answer.RestOfPlan.Changes;
import batchwright.answer.RestOfPlan.ForGuest;
import batchwright.answer.RestOfPlan.ToAnother;
import batchwright.book.BoxesLeft;
import batchwright.plan.Plan;
import batchwright.plan.left.LeftDish;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the rest of a kept plan starts from, and how the new plan differs from it. */
public final class RestOfPlanText {
    private RestOfPlanText() {}

    /** Ends with an empty line. */
    public static String of(RestOfPlan rest, Optional<Plan> plan, int width) {
        var page = new Page(width);
        RestOfPlan.Stretch stretch = rest.stretch();
        LocalDate today = stretch.first();
        page.paragraph("THE REST of the plan of " + Dates.shortly(stretch.planOf(), today) + ": "
                + Show.count(stretch.days(), "day", "days") + " from " + Dates.shortly(stretch.first(), today) + " on");
        page.paragraph(
                "  ",
                "    ",
                rest.left().eaten().isEmpty()
                        ? "No container is left for it."
                        : "Left and eaten in it"
                                + (stretch.keeps() ? ", on the days it was planned for where it was" : "") + ": "
                                + rest.left().dishes().stream()
                                        .filter(LeftDish::isEaten)
                                        .collect(Collectors.groupingBy(
                                                left -> left.origin() + " for " + left.eater(),
                                                LinkedHashMap::new,
                                                Collectors.summingInt(LeftDish::containers)))
                                        .entrySet()
                                        .stream()
                                        .map(entry -> entry.getValue() + " x " + entry.getKey())
                                        .collect(Collectors.joining(", "))
                                + ".");
        rest.guests().forEach(guest -> page.paragraph("  ", "    ", says(guest, today)));
        plan.map(rest::given).orElse(List.of()).forEach(given -> page.paragraph("  ", "    ", says(given)));
        plan.map(rest::changes).ifPresent(changes -> page.paragraph("  ", "    ", says(changes)));
        List<BoxesLeft.Lot> over = rest.over(plan);
        if (!over.isEmpty()) {
            page.paragraph(
                    "  ",
                    "    ",
                    "Left besides, and in no plan: " + EatenFirstText.until(over, today)
                            + ". Eat it by then in place of a container of the same size, or give it away.");
        }
        if (!rest.past().isEmpty()) {
            page.paragraph(
                    "  ",
                    "    ",
                    "Past its last day, to be thrown away: " + EatenFirstText.until(rest.past(), today) + ".");
        }
        return page.gap().toString();
    }

    private static String says(ToAnother given) {
        return "%s has %s x %s of %s, who has no room for it."
                .formatted(given.to(), given.count(), given.dish(), given.of());
    }

    private static String says(ForGuest guest, LocalDate today) {
        return "For the guest on %s: 1 x %s of %s. Then write: book gave away 1 %s of %s."
                .formatted(
                        Dates.shortly(guest.day(), today),
                        guest.boxes().dish(),
                        guest.boxes().eater(),
                        guest.boxes().dish(),
                        guest.boxes().eater());
    }

    private static String says(Changes changes) {
        return changes.days() == 0
                ? "No day has other containers than before."
                : "%s other containers than before; %s new or on another day."
                        .formatted(
                                changes.days() == 1 ? "1 day has" : changes.days() + " days have",
                                changes.containers() == 1 ? "1 is" : changes.containers() + " are");
    }
}

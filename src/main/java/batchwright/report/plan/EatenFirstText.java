package batchwright.report.plan;

import batchwright.answer.EatenFirst;
import batchwright.answer.EatenFirst.OneDay;
import batchwright.book.BoxesLeft;
import batchwright.book.Event.Place;
import batchwright.report.print.Commands;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** Containers of before, in front of the plan that begins after them. */
public final class EatenFirstText {
    /** Less than this is no gap [kcal]. */
    private static final BigDecimal NO_GAP = BigDecimal.valueOf(50);

    private EatenFirstText() {}

    /** Empty when there are none; else it ends with an empty line. */
    public static String of(EatenFirst first, Commands commands, int width) {
        if (first.isNone()) {
            return "";
        }
        var page = new Page(width);
        if (first.days() > 0) {
            page.paragraph("EAT FIRST: what is left makes "
                    + Show.count(first.days(), "whole day", "whole days") + "; the plan is for what comes after, from "
                    + Dates.shortly(first.next()) + " on");
            first.eatersDays().forEach(day -> page.paragraph("  ", "    ", says(day, commands)));
        }
        if (!first.over().isEmpty()) {
            page.paragraph("Left besides, and in no plan, as it makes no whole day for everybody: "
                    + until(first.over(), first.day())
                    + ". Eat it by then in place of a container of the same size, or give it away.");
        }
        if (!first.past().isEmpty()) {
            page.paragraph("Past its last day, to be thrown away: " + until(first.past(), first.day()) + ".");
        }
        return page.gap().toString();
    }

    /** Where there is no plan: how advice about days is meant. Empty when nothing is eaten first. */
    public static String daysCount(EatenFirst first) {
        return first.days() == 0
                ? ""
                : "Days named below are those after " + Show.count(first.days(), "day", "days")
                        + " of what is left: --days is " + first.days() + " more.\n\n";
    }

    private static String says(OneDay day, Commands commands) {
        String boxes = day.boxes().stream().map(lot -> box(lot, day.eater())).collect(Collectors.joining(" + "));
        String gap = day.shortKcal().compareTo(NO_GAP) < 0
                ? ""
                : "; %s kcal short: %s"
                        .formatted(
                                Show.whole(day.shortKcal()),
                                commands.line("snack %s%s --for %s"
                                        .formatted(
                                                Show.whole(day.shortKcal()),
                                                day.shortProteinG().signum() > 0
                                                        ? " --protein " + Show.whole(day.shortProteinG())
                                                        : "",
                                                day.eater())));
        return "%s  %s: %s; %s kcal%s"
                .formatted(Dates.shortly(day.day()), day.eater(), boxes, Show.whole(day.kcal()), gap);
    }

    private static String box(BoxesLeft.Lot lot, String eater) {
        String whose =
                lot.boxes().eater().equals(eater) ? "" : " of " + lot.boxes().eater();
        return lot.count() + " x " + lot.boxes().dish() + whose + (lot.place() == Place.FREEZER ? " (frozen)" : "");
    }

    static String until(List<BoxesLeft.Lot> lots, LocalDate today) {
        return lots.stream().map(lot -> until(lot, today)).collect(Collectors.joining(", "));
    }

    private static String until(BoxesLeft.Lot lot, LocalDate today) {
        return "%s x %s for %s until %s"
                .formatted(lot.count(), lot.boxes().dish(), lot.boxes().eater(), Dates.shortly(lot.until(), today));
    }
}

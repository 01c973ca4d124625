package batchwright.report.plan;

import batchwright.food.Nutrients;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Session;
import batchwright.report.needs.LimitCells;
import batchwright.report.print.BandPicture;
import batchwright.report.print.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Each day of an eater against the target; limit by limit; where the page is wide enough, with a picture of where its energy lies in the band.
 */
public record DaysTable(Session session, EaterDays eater) {
    /** Columns of the table without a picture and with large figures. */
    private static final int WITHOUT = 80;

    private static final int MOST_LIMITS = 6;
    private static final int LEAST_PICTURE = 17;
    private static final int MOST_PICTURE = 41;

    /** Explains the picture; empty where there is no room for one. */
    static String note(int width) {
        return width - WITHOUT < LEAST_PICTURE
                ? ""
                : " [-*-:-] shows where in its band the energy lies, with the aim at the colon.";
    }

    /** One or more tables: no more limits stand beside each other than the narrowest page has room for. */
    List<TextTable> of(int width) {
        List<Limit> limits = target().shown();
        List<TextTable> tables = new ArrayList<>();
        for (int from = 0; from < limits.size(); from += MOST_LIMITS) {
            tables.add(of(limits.subList(from, Math.min(limits.size(), from + MOST_LIMITS)), width));
        }
        return tables;
    }

    private DayTarget target() {
        return eater.seat().target();
    }

    private TextTable of(List<Limit> limits, int width) {
        List<LimitCells> columns =
                limits.stream().map(limit -> cells(limit, width - WITHOUT)).toList();
        var table = new TextTable("  ").left("");
        columns.forEach(column -> column.heads(table));
        row(table, "target", columns.stream().map(LimitCells::target));
        for (Day day : eater.days()) {
            Nutrients holds = session.totals(eater.seat().eater(), day);
            row(
                    table,
                    "day " + (day.day() + session.firstDay() - 1),
                    columns.stream().map(column -> column.of(holds)));
        }
        if (eater.days().size() > 1 && !target().limits(Scope.MEAN_OF_DAYS).isEmpty()) {
            Nutrients mean = session.averageDay(eater);
            row(table, "average", columns.stream().map(column -> column.of(mean)));
        }
        return table;
    }

    private static void row(TextTable table, String name, Stream<List<String>> cells) {
        table.row(Stream.concat(Stream.of(name), cells.flatMap(List::stream)).toArray(String[]::new));
    }

    /** Only what has an aim and two ends has a picture: as wide as there is room, and odd, so that it has one middle. */
    private LimitCells cells(Limit limit, int room) {
        OptionalInt aim = target().aim(limit);
        OptionalInt most = limit.range().most();
        int columns = Math.min(MOST_PICTURE, room - (room + 1) % 2);
        boolean drawn = columns >= LEAST_PICTURE && aim.isPresent() && most.isPresent();
        return new LimitCells(
                limit,
                target().mark(limit),
                drawn
                        ? Optional.of(new BandPicture(limit.range().least(), aim.getAsInt(), most.getAsInt(), columns))
                        : Optional.empty());
    }
}

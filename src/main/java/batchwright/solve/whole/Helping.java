package batchwright.solve.whole;

import batchwright.food.Part;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All containers of one dish for one eater: how much of each part is in each of them (the same in all), and on which day the
 * first and the second one of a day are eaten.
 *
 * <p>What a day takes in is a product, containers x steps, and a linear model cannot multiply. But a container is there or not:
 * for each place of a day (a first, a second container) a column {@code served} is 1 or 0, and a column {@code part} follows it:
 * the steps of the container when it is 1, nothing when it is 0. Four rows say so exactly, with no factor larger than the most
 * steps of the part.
 */
final class Helping {
    private final Who who;
    private final MipModel model;
    private final Column gets;
    private final Map<String, Column> steps = new LinkedHashMap<>();
    private final Map<String, Column> kept = new LinkedHashMap<>();
    private final Map<Integer, List<Column>> served = new LinkedHashMap<>();
    private final Map<String, Map<Integer, List<Column>>> parts = new LinkedHashMap<>();

    /** @param gets 1 when the eater gets any of the dish, else 0 */
    Helping(Who who, int days, Column gets, MipModel model) {
        this.who = who;
        this.model = model;
        this.gets = gets;
        for (int day = 1; day <= days; day++) {
            served.put(day, who.dish().keepsUntil(day) ? places(who.seat(), day) : List.of());
        }
        for (Part part : who.dish().parts()) {
            fill(part);
            Map<Integer, List<Column>> ofDay = new LinkedHashMap<>();
            parts.put(part.name(), ofDay);
            served.forEach((day, places) -> ofDay.put(day, inPlaces(part, day, places)));
        }
    }

    private List<Column> places(Seat seat, int day) {
        int most = seat.eater().wishes().mostADay(who.dish());
        List<Column> places = new ArrayList<>();
        for (int nth = 1; nth <= most; nth++) {
            String name = place(day, nth);
            Column column = model.column("served." + name, 0, 1, true, 0);
            // No second one without a first; no first one unless the eater gets the dish.
            Column before = places.isEmpty() ? gets : places.get(places.size() - 1);
            model.atMost("served_if." + name, difference(column, before), 0);
            places.add(column);
        }
        return places;
    }

    private String place(int day, int nth) {
        return who.name() + ".day" + day + "." + nth;
    }

    private void fill(Part part) {
        String name = part.name() + "." + who.name();
        boolean allowed = who.seat().eater().wishes().allows(part);
        int most = allowed ? part.mostGrams() / part.stepGrams() : 0;
        int least = part.leastGrams() / part.stepGrams();
        Column column = model.column("steps." + name, 0, most, true, 0);
        steps.put(part.name(), column);
        Column in = gets;
        if (part.optional()) {
            in = model.column("keep." + name, 0, allowed ? 1 : 0, true, 0);
            kept.put(part.name(), in);
            model.atMost("keep_if." + name, difference(in, gets), 0);
        }
        model.atMost("steps_most." + name, Expression.of(column).plus(in, -most), 0);
        model.atLeast("steps_least." + name, Expression.of(column).plus(in, -least), 0);
    }

    private List<Column> inPlaces(Part part, int day, List<Column> places) {
        List<Column> columns = new ArrayList<>();
        for (int nth = 1; nth <= places.size(); nth++) {
            columns.add(follow(part, part.name() + "." + place(day, nth), places.get(nth - 1)));
        }
        return columns;
    }

    /** A column that is the part's steps where the container is served, and 0 where it is not. */
    private Column follow(Part part, String name, Column place) {
        Column all = stepsColumn(part);
        double most = all.upper();
        Column column = model.column("part." + name, 0, most, false, 0);
        model.atMost("part_most." + name, Expression.of(column).plus(place, -most), 0);
        // Not served: 0 >= steps - most, which holds; for a dish that the eater does not get, steps are 0.
        model.atLeast(
                "part_all." + name, difference(column, all).plus(gets, most).plus(place, -most), 0);
        // A part that is always in has at least its least in each container, which makes two rows tighter.
        double least = part.optional() ? 0 : (double) part.leastGrams() / part.stepGrams();
        model.atMost(
                "part_same." + name, difference(column, all).plus(gets, least).plus(place, -least), 0);
        if (least > 0) {
            model.atLeast("part_least." + name, Expression.of(column).plus(place, -least), 0);
        }
        return column;
    }

    private static Expression difference(Column one, Column other) {
        return Expression.of(one).plus(other, -1);
    }

    private static <T> T found(@Nullable T value) {
        return Objects.requireNonNull(value, "no such part or day");
    }

    Who who() {
        return who;
    }

    /** 1 when the eater gets any of the dish, else 0. */
    Column gets() {
        return gets;
    }

    /** Steps of the scale, or pieces, of a part in each container; 0 when the eater does not get the dish. */
    Column stepsColumn(Part part) {
        return found(steps.get(part.name()));
    }

    /** For an optional part: 1 when it is in, 0 when it is left out. */
    Optional<Column> keptColumn(Part part) {
        return Optional.ofNullable(kept.get(part.name()));
    }

    /** For each container of a day that may be served: 1 when it is. */
    List<Column> servedColumns(int day) {
        return found(served.get(day));
    }

    /** Steps of a part in each container of {@link #servedColumns}. */
    List<Column> partColumns(Part part, int day) {
        return found(found(parts.get(part.name())).get(day));
    }

    Expression containers(int day) {
        var sum = new Expression();
        servedColumns(day).forEach(place -> sum.plus(place, 1));
        return sum;
    }

    Expression grams(Part part, int day) {
        var sum = new Expression();
        partColumns(part, day).forEach(column -> sum.plus(column, part.stepGrams()));
        return sum;
    }

    int mostContainers() {
        return served.values().stream().mapToInt(List::size).sum();
    }
}

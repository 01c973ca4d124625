package batchwright.audit.proof;

import batchwright.audit.proof.CookedWays.Way;
import batchwright.food.Dish.Kind;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.person.Meals;
import batchwright.person.Wishes;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;

/** What each eater gets over all days: limits of days and containers, containers a day, meals, keeping, snacks. */
final class EaterRows {
    private final TotalsOfDishes totals;
    private final ProofModel model;
    private final int days;

    EaterRows(TotalsOfDishes totals) {
        this.totals = totals;
        this.model = totals.model();
        this.days = totals.request().days();
    }

    void add() {
        for (Seat seat : totals.request().seats()) {
            limits(seat);
            counts(seat);
            keeping(seat);
            snacks(seat);
        }
    }

    private void limits(Seat seat) {
        for (Limit limit : seat.target().limits()) {
            String name = limit.id() + "." + seat.eater().id();
            if (limit.scope() == Scope.DAY || limit.scope() == Scope.MEAN_OF_DAYS) {
                daily(seat, limit, name);
            } else {
                for (Way way : totals.ways().of(seat)) {
                    container(seat, way, limit, name + "." + way.name());
                }
            }
        }
    }

    /** All days hold so many times what a day, or the mean of days, may. */
    private void daily(Seat seat, Limit limit, String name) {
        BigDecimal always = BigDecimal.ZERO;
        for (Wishes.Always each : seat.eater().wishes().always()) {
            always = always.add(in(each.measure(), limit.measured()).multiply(BigDecimal.valueOf(each.count())));
        }
        ProofModel.Sum eaten = model.new Sum();
        for (Way way : totals.ways().of(seat)) {
            for (Part part : way.dish().parts()) {
                eaten.plus(totals.gramsOf(part, way, seat), PerGram.of(part, limit.measured()));
            }
        }
        for (Measure measure : totals.snacks(seat)) {
            eaten.plus(totals.snackOf(measure, seat), in(measure, limit.measured()));
        }
        if (limit.range().hasLeast()) {
            eaten.atLeast(name + ".least", least(limit).subtract(always).multiply(BigDecimal.valueOf(days)));
        }
        if (limit.range().most().isPresent()) {
            eaten.atMost(name + ".most", most(limit).subtract(always).multiply(BigDecimal.valueOf(days)));
        }
    }

    private static BigDecimal least(Limit limit) {
        return BigDecimal.valueOf(limit.range().least()).subtract(TotalsOfDishes.TOLERANCE);
    }

    private static BigDecimal most(Limit limit) {
        return BigDecimal.valueOf(limit.range().most().orElseThrow()).add(TotalsOfDishes.TOLERANCE);
    }

    private static BigDecimal in(Measure measure, Nutrient nutrient) {
        return measure.food().per100g().get(nutrient).multiply(measure.grams()).movePointLeft(2);
    }

    /** All containers of a dish together, which are alike. */
    private void container(Seat seat, Way way, Limit limit, String name) {
        BiFunction<Part, BigDecimal, BigDecimal> over = (part, figure) -> limit.scope() == Scope.PER_100_G
                ? PerGram.of(part, limit.measured())
                        .subtract(figure.multiply(PerGram.of(part, Nutrient.COOKED_WEIGHT))
                                .movePointLeft(2))
                : PerGram.of(part, limit.measured());
        if (limit.range().hasLeast()) {
            held(seat, way, limit, over, least(limit)).atLeast(name + ".least", 0);
        }
        if (limit.range().most().isPresent()) {
            held(seat, way, limit, over, most(limit)).atMost(name + ".most", 0);
        }
    }

    private ProofModel.Sum held(
            Seat seat, Way way, Limit limit, BiFunction<Part, BigDecimal, BigDecimal> over, BigDecimal figure) {
        ProofModel.Sum held = model.new Sum();
        for (Part part : way.dish().parts()) {
            held.plus(totals.gramsOf(part, way, seat), over.apply(part, figure));
        }
        return limit.scope() == Scope.PER_100_G ? held : held.plus(totals.containersOf(way, seat), figure.negate());
    }

    private void counts(Seat seat) {
        Wishes wishes = seat.eater().wishes();
        Meals meals = wishes.meals();
        String name = seat.eater().id();
        int all = wishes.containersADay();
        int lunches = meals.mostLunches(all);
        int dinners = meals.mostDinners(all);
        int least = meals.lunches().least() + meals.dinners().least();
        meals(seat, "containers_a_day." + name, EnumSet.allOf(Kind.class), all, all);
        meals(
                seat,
                "breakfasts." + name,
                Set.of(Kind.BREAKFAST),
                meals.breakfasts().least(),
                meals.mostBreakfasts());
        meals(seat, "lunches." + name, Set.of(Kind.LUNCH), 0, lunches);
        meals(seat, "dinners." + name, Set.of(Kind.DINNER), 0, dinners);
        meals(
                seat,
                "for_lunch." + name,
                Set.of(Kind.LUNCH, Kind.MAIN),
                meals.lunches().least(),
                all);
        meals(
                seat,
                "for_dinner." + name,
                Set.of(Kind.DINNER, Kind.MAIN),
                meals.dinners().least(),
                all);
        meals(seat, "not_breakfast." + name, Set.of(Kind.LUNCH, Kind.DINNER, Kind.MAIN), least, lunches + dinners);
    }

    /** Containers of dishes of some kinds; least and most are those of a day. */
    private void meals(Seat seat, String name, Set<Kind> kinds, int least, int most) {
        ProofModel.Sum sum = model.new Sum();
        for (Way way : totals.ways().of(seat)) {
            if (kinds.contains(way.dish().kind())) {
                sum.plus(totals.containersOf(way, seat), 1);
            }
        }
        if (least > 0) {
            sum.atLeast(name + ".least", (long) least * days);
        }
        sum.atMost(name + ".most", (long) most * days);
    }

    /** What does not keep beyond a day is eaten up to it; and what keeps until a day can fill it. */
    private void keeping(Seat seat) {
        int aDay = seat.eater().wishes().containersADay();
        for (int day = 1; day < days; day++) {
            ProofModel.Sum early = model.new Sum();
            for (Way way : totals.ways().of(seat)) {
                if (!way.dish().freezes() && way.dish().fridgeDays() <= day) {
                    early.plus(totals.containersOf(way, seat), 1);
                }
            }
            ProofModel.Sum late = model.new Sum();
            for (String dish : totals.ways().dishes()) {
                Way way = totals.ways().of(dish).get(0);
                boolean mine = totals.ways().of(dish).stream().anyMatch(w -> CookedWays.isFor(seat, w));
                if (!mine) {
                    continue;
                }
                if (way.dish().freezes() || way.dish().fridgeDays() > day) {
                    late.plus(model.column("cook." + dish), CookedWays.mostADay(seat, way.dish()));
                }
            }
            String name = "day" + day + "." + seat.eater().id();
            if (!early.isEmpty()) {
                early.atMost("keeping." + name, (long) aDay * day);
            }
            late.atLeast("after." + name, aDay);
        }
    }

    private void snacks(Seat seat) {
        Wishes wishes = seat.eater().wishes();
        String name = "." + seat.eater().id();
        ProofModel.Sum measures = model.new Sum();
        ProofModel.Sum kinds = model.new Sum();
        ProofModel.Sum bare = model.new Sum();
        Map<String, ProofModel.Sum> alike = new LinkedHashMap<>();
        for (Measure measure : totals.snacks(seat)) {
            int column = totals.snackOf(measure, seat);
            measures.plus(column, 1);
            kinds.plus(column, share(TotalsOfDishes.mostADay(seat, measure)));
            switch (measure.snackKind()) {
                case "" -> {}
                case "spread" -> bare.plus(column, 1);
                case "carrier" -> bare.plus(column, -2);
                default ->
                    alike.computeIfAbsent(measure.snackKind(), kind -> model.new Sum())
                            .plus(column, share(measure.snackMost()));
            }
        }
        measures.atMost("snack_measures" + name, (long) wishes.snackMeasuresADay() * days);
        kinds.atMost("snack_kinds" + name, (long) wishes.snackKindsADay() * days);
        if (!wishes.meals().anySnacks()) {
            int carriers = 0;
            for (Wishes.Always always : wishes.always()) {
                carriers += always.measure().snackKind().equals("carrier") ? always.count() : 0;
            }
            bare.atMost("snack_spreads" + name, 2L * carriers * days);
            alike.forEach((kind, sum) -> sum.atMost("snack_one." + kind + name, days));
        }
    }

    /** What one counts of a day's most of it; nothing where none is allowed. */
    private static BigDecimal share(int most) {
        return most == 0 ? BigDecimal.ZERO : BigDecimal.ONE.divide(BigDecimal.valueOf(most), MathContext.DECIMAL128);
    }
}

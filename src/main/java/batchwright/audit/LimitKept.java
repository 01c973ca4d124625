package batchwright.audit;

import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.plan.Day;
import batchwright.plan.Fill;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/**
 * Each eater at the table gets what a limit of theirs says.
 *
 * @param name of the limit; limits of the same name of several eaters are one rule
 */
record LimitKept(String name) implements Inspection {
    private static final BigDecimal HUNDRED_GRAMS = BigDecimal.valueOf(100);

    /** One for each name, in the order of the eaters' lists. */
    static List<Inspection> all(List<Seat> seats) {
        return seats.stream()
                .flatMap(seat -> seat.target().limits().stream())
                .map(Limit::name)
                .distinct()
                .<Inspection>map(LimitKept::new)
                .toList();
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        for (Seat seat : evidence.request().seats()) {
            seat.target().limits().stream()
                    .filter(limit -> limit.name().equals(name))
                    .forEach(limit -> inspect(evidence, seat, limit, findings));
        }
    }

    private static void inspect(Evidence evidence, Seat seat, Limit limit, Findings findings) {
        switch (limit.scope()) {
            case DAY ->
                evidence.days(seat)
                        .forEach(day -> check(
                                limit, Say.day(seat, day), evidence.eaten().onDay(seat.eater(), day), 1, findings));
            case CONTAINER ->
                evidence.fills((batch, fill) -> {
                    if (fill.isFor(seat.eater())) {
                        check(
                                limit,
                                "a container of " + batch.dish().id() + " for "
                                        + seat.eater().name(),
                                held(evidence, batch.dish(), fill, limit.measured()),
                                findings);
                    }
                });
            case PER_100_G ->
                evidence.fills((batch, fill) -> {
                    BigDecimal weight = held(evidence, batch.dish(), fill, Nutrient.COOKED_WEIGHT);
                    if (fill.isFor(seat.eater()) && weight.signum() > 0) {
                        check(
                                limit,
                                "a container of " + batch.dish().id() + " for "
                                        + seat.eater().name(),
                                held(evidence, batch.dish(), fill, limit.measured())
                                        .multiply(HUNDRED_GRAMS)
                                        .divide(weight, Tolerance.DIGITS),
                                findings);
                    }
                });
            case MEAN_OF_DAYS -> {
                var all = new Grams();
                List<Day> days = evidence.days(seat);
                days.forEach(day -> all.add(evidence.eaten().onDay(seat.eater(), day), 1));
                if (!days.isEmpty()) {
                    check(limit, seat.eater().name() + ", an average day", all, days.size(), findings);
                }
            }
        }
    }

    /** @param share the limit is on one of so many equal shares */
    private static void check(Limit limit, String where, Grams grams, int share, Findings findings) {
        check(
                limit,
                where,
                grams.holds(limit.measured()).divide(BigDecimal.valueOf(share), Tolerance.DIGITS),
                findings);
    }

    private static BigDecimal held(Evidence evidence, Dish dish, Fill fill, Nutrient measured) {
        return CookedWeights.of(evidence.known(), dish, fill, measured)
                .orElseGet(() -> evidence.eaten().inContainer(dish, fill).holds(measured));
    }

    private static void check(Limit limit, String where, BigDecimal found, Findings findings) {
        Range range = limit.range();
        Function<String, String> sentence =
                against -> where + ": " + limit.measured().label() + " " + against;
        BigDecimal least = BigDecimal.valueOf(range.least());
        if (Tolerance.less(found, least)) {
            findings.add(sentence.apply(Say.against(found, "at least", least, limit.unit())));
        }
        if (range.most().isPresent()) {
            BigDecimal most = BigDecimal.valueOf(range.most().getAsInt());
            if (Tolerance.less(most, found)) {
                findings.add(sentence.apply(Say.against(found, "at most", most, limit.unit())));
            }
        }
    }
}

package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Scope;
import batchwright.plan.Seat;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

/** An eater's days against the target, in one sentence. A plan whose days miss it is never shown. */
public record OnTarget(String eater, String says) {
    static OnTarget of(Seat seat, List<EatenDay> days) {
        DayTarget target = seat.target();
        String says = range(days, Nutrient.ENERGY) + " kcal a day (target " + target.energyAimKcal() + ", "
                + target.day(Nutrient.ENERGY).says() + ") and "
                + range(days, Nutrient.PROTEIN) + " g protein (at least "
                + target.day(Nutrient.PROTEIN).least()
                + "). Every day is on target." + onAverage(target, days);
        return new OnTarget(seat.eater().name(), says);
    }

    /** What the mean of all days is, and should be. */
    private static String onAverage(DayTarget target, List<EatenDay> days) {
        return target.limits(Scope.MEAN_OF_DAYS).stream()
                .map(limit -> " On average " + Show.whole(mean(days, limit.measured())) + " " + limit.unit() + " "
                        + limit.measured().label() + " (" + limit.range().says() + ").")
                .collect(Collectors.joining());
    }

    private static BigDecimal mean(List<EatenDay> days, Nutrient nutrient) {
        return days.stream()
                .map(day -> day.exact().get(nutrient))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(days.size()), MathContext.DECIMAL64);
    }

    private static String range(List<EatenDay> days, Nutrient nutrient) {
        int least = days.stream().mapToInt(d -> d.total(nutrient)).min().orElse(0);
        int most = days.stream().mapToInt(d -> d.total(nutrient)).max().orElse(0);
        return least == most ? Integer.toString(least) : least + " to " + most;
    }
}

package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.plan.Seat;
import java.util.List;

/** An eater's days against the target, in one sentence. A plan whose days miss it is never shown. */
final class OnTarget {
    private OnTarget() {}

    static void write(Html html, Seat seat, List<EatenDay> days) {
        DayTarget target = seat.target();
        html.open("p", "class", "hit").open("strong").name(seat.eater().name()).close();
        html.text(": " + range(days, Nutrient.ENERGY) + " kcal a day (target " + target.energyAimKcal() + ", "
                + target.day(Nutrient.ENERGY).says() + ") and "
                + range(days, Nutrient.PROTEIN) + " g protein (at least "
                + target.day(Nutrient.PROTEIN).least()
                + "). Every day is on target.");
        html.close().line();
    }

    private static String range(List<EatenDay> days, Nutrient nutrient) {
        int least = days.stream().mapToInt(d -> d.total(nutrient)).min().orElse(0);
        int most = days.stream().mapToInt(d -> d.total(nutrient)).max().orElse(0);
        return least == most ? Integer.toString(least) : least + " to " + most;
    }
}

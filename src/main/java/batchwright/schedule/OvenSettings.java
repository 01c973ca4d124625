package batchwright.schedule;

import batchwright.food.Appliance;
import batchwright.food.Equipment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When to turn the oven to which temperature. It is turned before whatever it does not suit, in time to heat; when something is
 * still in it that suits both temperatures, at once.
 */
final class OvenSettings {
    private OvenSettings() {}

    static List<OvenSetting> of(List<PlacedStep> steps, Equipment.Oven oven) {
        List<PlacedStep> baked = steps.stream()
                .filter(step -> step.on().filter(a -> a == Appliance.OVEN).isPresent())
                .sorted(Comparator.comparingInt(PlacedStep::start))
                .toList();
        List<OvenSetting> settings = new ArrayList<>();
        int cold = Integer.MIN_VALUE / 2;
        int set = cold;
        int warmUntil = cold;
        for (PlacedStep step : baked) {
            int celsius = step.celsius().orElseThrow();
            boolean warm = warmUntil >= step.start() - oven.heatingMinutes();
            if (!warm || Math.abs(celsius - set) > oven.toleranceCelsius()) {
                boolean inUse = warmUntil > step.start() - oven.heatingMinutes();
                int minute = inUse ? step.start() : step.start() - oven.heatingMinutes();
                settings.add(new OvenSetting(minute, celsius));
                set = celsius;
            }
            warmUntil = Math.max(warmUntil, step.end());
        }
        return settings;
    }
}

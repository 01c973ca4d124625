package batchwright.app.desk;

import batchwright.app.Refused;
import batchwright.files.profile.ProfileRanges;
import batchwright.files.value.NumberRange;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.person.Adjustments;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.person.Wishes;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What is changed of an eater, as if the profile said so: needs, limits and cautions follow from it. What is empty is as the profile
 * says.
 *
 * @param goalKcal surplus (positive) or deficit (negative) [kcal a day]
 * @param energyBandPercent how far a day may miss the energy aim [% of it]
 * @param proteinGPerKg protein floor [g per kg of body weight a day]
 * @param containersADay exactly so many
 * @param snacks the only foods offered as snacks, by id; empty set: none
 */
public record EaterSliders(
        OptionalInt goalKcal,
        OptionalDouble energyBandPercent,
        OptionalDouble proteinGPerKg,
        OptionalInt containersADay,
        Optional<Set<String>> snacks) {
    public static final EaterSliders AS_WRITTEN = new EaterSliders(
            OptionalInt.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.empty(), Optional.empty());

    public EaterSliders withGoalKcal(int kcal) {
        return new EaterSliders(OptionalInt.of(kcal), energyBandPercent, proteinGPerKg, containersADay, snacks);
    }

    public EaterSliders withEnergyBand(double percent) {
        return new EaterSliders(goalKcal, OptionalDouble.of(percent), proteinGPerKg, containersADay, snacks);
    }

    public EaterSliders withProtein(double gPerKg) {
        return new EaterSliders(goalKcal, energyBandPercent, OptionalDouble.of(gPerKg), containersADay, snacks);
    }

    public EaterSliders withContainersADay(int containers) {
        return new EaterSliders(goalKcal, energyBandPercent, proteinGPerKg, OptionalInt.of(containers), snacks);
    }

    public EaterSliders withSnacks(Set<String> foods) {
        return new EaterSliders(goalKcal, energyBandPercent, proteinGPerKg, containersADay, Optional.of(foods));
    }

    /** @throws Refused when a figure is outside what a profile may say */
    public void check() {
        goalKcal.ifPresent(kcal -> {
            if (kcal != 0) {
                check(Math.abs(kcal), ProfileRanges.KCAL);
            }
        });
        energyBandPercent.ifPresent(percent -> check(percent, ProfileRanges.BAND));
        proteinGPerKg.ifPresent(grams -> check(grams, ProfileRanges.PROTEIN));
        containersADay.ifPresent(containers -> check(containers, ProfileRanges.CONTAINERS));
    }

    /** @throws Refused when a figure is outside what a profile may say, or there is no such food */
    Eater of(Eater written, Kitchen kitchen) {
        check();
        Eater changed = goalKcal.isPresent() ? written.withGoal(new Goal.EnergyADay(goalKcal.getAsInt())) : written;
        return changed.withAdjustments(adjustments(written.adjustments()))
                .withWishes(wishes(written.wishes(), kitchen));
    }

    private static void check(double figure, NumberRange range) {
        BigDecimal number = BigDecimal.valueOf(figure);
        if (!range.holds(number)) {
            throw Refused.because(range.wrong(number), range.expected());
        }
    }

    private Adjustments adjustments(Adjustments written) {
        Adjustments band =
                energyBandPercent.isPresent() ? written.withEnergyBand(energyBandPercent.getAsDouble()) : written;
        return proteinGPerKg.isPresent() ? band.withProtein(proteinGPerKg.getAsDouble()) : band;
    }

    private Wishes wishes(Wishes written, Kitchen kitchen) {
        Wishes counted = containersADay.isPresent() ? written.withContainersADay(containersADay.getAsInt()) : written;
        return snacks.map(only -> counted.withSnacks(
                        Optional.of(foods(only, kitchen)), written.snackMeasuresADay(), written.snackKindsADay()))
                .orElse(counted);
    }

    private static Set<Food> foods(Set<String> ids, Kitchen kitchen) {
        Set<Food> foods = new LinkedHashSet<>();
        for (String id : ids) {
            foods.add(Optional.ofNullable(kitchen.foods().get(id))
                    .orElseThrow(() -> Refused.because(
                            "there is no food called \"" + id + "\"", "It is the short name of a food.")));
        }
        return foods;
    }
}

package batchwright.limit;

import batchwright.food.Nutrient;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A target for tests: the limits that the program lists for every eater, under their names, each of which allows anything until
 * it is given a figure. Profile figures are those of somebody of 70 kg.
 */
public record TestTarget(DayTarget target) {
    private static final int AIM = 1000;
    private static final double KG = 70;
    private static final int LOWEST_PROTEIN = 59;
    private static final int WIDEST_BAND_PERCENT = 15;

    /** [kcal] */
    public static TestTarget energy(int aim, int least, int most) {
        return of(aim).energy(least, most);
    }

    /** Energy and nothing else of a day may be anything, too. */
    public static TestTarget of(int aim) {
        return new TestTarget(new DayTarget(
                aim,
                List.of(
                        limit("energy band", Scope.DAY, Nutrient.ENERGY)
                                .changedBy(new Setting.PercentOfAim("energy_band", aim, WIDEST_BAND_PERCENT)),
                        limit("protein floor", Scope.DAY, Nutrient.PROTEIN)
                                .changedBy(new Setting.PerKg("protein", KG, LOWEST_PROTEIN)),
                        limit("fat band", Scope.DAY, Nutrient.FAT),
                        limit("fibre floor", Scope.DAY, Nutrient.FIBRE).changedBy(new Setting.Amount("fibre", "g")),
                        limit("fruit and vegetables", Scope.DAY, Nutrient.FRUIT_VEG)
                                .changedBy(new Setting.Amount("fruit_and_vegetables", "g")),
                        limit("container share", Scope.CONTAINER, Nutrient.ENERGY),
                        limit("container protein", Scope.CONTAINER, Nutrient.PROTEIN))));
    }

    public static Limit limit(String name, Scope scope, Nutrient measured) {
        return new Limit(name, scope, measured, Range.ANY, new Reason("", "invented for a test"), Optional.empty());
    }

    /** Whatever energy a day has. */
    public static TestTarget anything() {
        return of(AIM);
    }

    public TestTarget energy(int least, int most) {
        return with(Scope.DAY, Nutrient.ENERGY, Range.between(least, most));
    }

    public TestTarget protein(int least) {
        return with(Scope.DAY, Nutrient.PROTEIN, Range.atLeast(least));
    }

    public TestTarget fat(int least, int most) {
        return with(Scope.DAY, Nutrient.FAT, Range.between(least, most));
    }

    public TestTarget fibre(int least) {
        return with(Scope.DAY, Nutrient.FIBRE, Range.atLeast(least));
    }

    public TestTarget fruitVeg(int least) {
        return with(Scope.DAY, Nutrient.FRUIT_VEG, Range.atLeast(least));
    }

    public TestTarget container(int least, int most) {
        return with(Scope.CONTAINER, Nutrient.ENERGY, Range.between(least, most));
    }

    public TestTarget containerProtein(int least) {
        return with(Scope.CONTAINER, Nutrient.PROTEIN, Range.atLeast(least));
    }

    /** Energy on average. */
    public TestTarget mean(Range range) {
        return and(limit("energy on average", Scope.MEAN_OF_DAYS, Nutrient.ENERGY)
                .changedBy(new Setting.PercentOfAim("energy_on_average", target.energyAimKcal(), WIDEST_BAND_PERCENT))
                .with(range));
    }

    /** One more limit, last in the list. */
    public TestTarget and(Limit limit) {
        List<Limit> limits = new ArrayList<>(target.limits());
        limits.add(limit);
        return new TestTarget(new DayTarget(target.energyAimKcal(), limits));
    }

    private TestTarget with(Scope scope, Nutrient measured, Range range) {
        return new TestTarget(target.with(scope, measured, range));
    }
}

package batchwright.explain;

import batchwright.person.DayTarget;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.IntFunction;

/** Dials for what a day, or a container, must at least hold: lowered by whole grams. */
final class FloorDials {
    /**
     * No cure asks for less protein than this [g per kg of body weight]: the safe level for adults of WHO/FAO/UNU, Technical
     * Report Series 935, 2007 (figure from memory).
     */
    private static final double LEAST_PROTEIN_G_PER_KG = 0.83;

    private static final int MOST_DECIMALS = 3;

    /** The target with a floor set to so many grams. */
    private interface Setter {
        DayTarget to(DayTarget target, int grams);
    }

    private FloorDials() {}

    static Dial protein(AtTable at) {
        int grams = at.target().proteinLeastG();
        return floor(
                "protein floor",
                at,
                "each day of " + at.name() + " holds at least " + grams + " g of protein",
                grams,
                grams - lowestProtein(at),
                DayTarget::withProtein,
                g -> "protein: " + gPerKg(at, g) + " g per kg under target, in " + at.file());
    }

    /** No change asks for less than this [g a day]. */
    static int lowestProtein(AtTable at) {
        return (int) Math.ceil(LEAST_PROTEIN_G_PER_KG * kg(at));
    }

    static Dial fibre(AtTable at) {
        int grams = at.target().fibreLeastG();
        return floor(
                "fibre floor",
                at,
                "each day of " + at.name() + " holds at least " + grams + " g of fibre",
                grams,
                grams,
                DayTarget::withFibre,
                g -> "fibre: " + g + " g under target, in " + at.file());
    }

    static Dial fruitAndVegetables(AtTable at) {
        int grams = at.target().fruitVegLeastG();
        return floor(
                "fruit and vegetables",
                at,
                "each day of " + at.name() + " holds at least " + grams + " g of fruit and vegetables",
                grams,
                grams,
                DayTarget::withFruitVeg,
                g -> "fruit_and_vegetables: " + g + " g under target, in " + at.file());
    }

    static Dial containerProtein(AtTable at) {
        int grams = at.target().containerProteinLeastG();
        return floor(
                "container protein",
                at,
                "each container of " + at.name() + " holds at least " + grams + " g of protein",
                grams,
                grams,
                (target, g) -> target.withContainer(target.containerLeastKcal(), target.containerMostKcal(), g),
                g -> BandDials.FIXED);
    }

    private static Dial floor(
            String rule, AtTable at, String says, int grams, int reach, Setter set, IntFunction<String> edit) {
        var lower = new Knob(
                Math.max(0, reach),
                (request, units) -> at.withTarget(request, t -> set.to(t, grams - units)),
                units -> "lower it to " + (grams - units) + " g",
                units -> edit.apply(grams - units));
        return new Dial(rule, says, request -> at.withTarget(request, t -> set.to(t, 0)), List.of(List.of(lower)));
    }

    /** A figure for the profile, with as few decimals as will do, that comes to so many grams once it is rounded up again. */
    private static String gPerKg(AtTable at, int grams) {
        BigDecimal exact = BigDecimal.valueOf(grams / kg(at));
        for (int decimals = 1; decimals < MOST_DECIMALS; decimals++) {
            BigDecimal rounded = exact.setScale(decimals, RoundingMode.FLOOR);
            if (Math.ceil(rounded.doubleValue() * kg(at)) == grams) {
                return rounded.toPlainString();
            }
        }
        return exact.setScale(MOST_DECIMALS, RoundingMode.FLOOR).toPlainString();
    }

    private static double kg(AtTable at) {
        return at.eater().body().weight().kg();
    }
}

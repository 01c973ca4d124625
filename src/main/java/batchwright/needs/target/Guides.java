package batchwright.needs.target;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.Eater;
import java.util.ArrayList;
import java.util.List;

/**
 * Published figures that go with a target and that no plan has to keep: carbohydrate, saturated fat, sugar, sodium, and protein of
 * older adults.
 *
 * @param carbohydrateLeastG what the aim leaves for carbohydrate beside the protein floor and the most fat
 * @param carbohydrateMostG the same beside the least fat
 * @param saturatedFatMostG 10 % of the aim
 * @param freeSugarMostG 10 % of the aim; the catalogue has only total sugar, so no plan is compared with it
 * @param lines the same in words, with sources
 */
public record Guides(
        int carbohydrateLeastG,
        int carbohydrateMostG,
        int saturatedFatMostG,
        int freeSugarMostG,
        List<TargetLine> lines) {
    public static final int SODIUM_MOST_MG = 2300;
    public static final Citation SATURATED_FAT =
            new Citation("Dietary Guidelines for Americans 2020-2025; WHO; from memory");

    private static final double KCAL_PER_G_FAT = 9; // general Atwater factors
    private static final double KCAL_PER_G_CARBOHYDRATE = 4;
    private static final double KCAL_PER_G_PROTEIN = 4;
    private static final double CARBOHYDRATE_LEAST = 0.45; // of energy
    private static final double CARBOHYDRATE_MOST = 0.65;
    private static final double SATURATED_FAT_MOST = 0.10;
    private static final double FREE_SUGAR_MOST = 0.10;
    private static final double OLDER_FROM_YEARS = 65;

    private static final Citation ATWATER = new Citation("general Atwater factors 4-9-4; AMDR: IOM 2005, from memory");
    private static final Citation GAINING = new Citation("Iraki et al., Sports 2019;7:154");
    private static final Citation LOSING = new Citation("Nutrients 2021;13:3255");
    private static final Citation SUGAR = new Citation("Dietary Guidelines for Americans 2020-2025; WHO; from memory");
    private static final Citation SODIUM =
            new Citation("NASEM, DRI for Sodium and Potassium, 2019: CDRR from memory, AI checked");
    private static final Citation OLDER = new Citation("PROT-AGE 2013, Moore 2015; from memory");

    /** @param goalKcal surplus (positive) or deficit (negative) a day */
    public static Guides of(Eater eater, DayTarget day, double goalKcal) {
        int aim = day.energyAimKcal();
        Range fat = day.day(Nutrient.FAT);
        int least = Numerals.up(carbohydrate(day, fat.most().orElse(0)));
        int most = Numerals.down(carbohydrate(day, fat.least()));
        int saturated = Numerals.down(aim * SATURATED_FAT_MOST / KCAL_PER_G_FAT);
        int sugar = Numerals.down(aim * FREE_SUGAR_MOST / KCAL_PER_G_CARBOHYDRATE);
        return new Guides(least, most, saturated, sugar, lines(eater, aim, goalKcal, least, most, saturated, sugar));
    }

    /** What the aim leaves when there is as much fat and no more protein than the floor [g]; never less than nothing. */
    private static double carbohydrate(DayTarget day, int fatG) {
        double kcal = day.energyAimKcal()
                - KCAL_PER_G_PROTEIN * day.day(Nutrient.PROTEIN).least()
                - KCAL_PER_G_FAT * fatG;
        return Math.max(0, kcal / KCAL_PER_G_CARBOHYDRATE);
    }

    private static List<TargetLine> lines(
            Eater eater, int aim, double goalKcal, int least, int most, int saturated, int sugar) {
        Body body = eater.body();
        List<TargetLine> lines = new ArrayList<>();
        lines.add(new TargetLine(
                "carbohydrate",
                least + " to " + most + " g, fibre included: what the aim leaves beside the protein floor and the fat"
                        + " range; 45-65 % of energy would be "
                        + Numerals.up(aim * CARBOHYDRATE_LEAST / KCAL_PER_G_CARBOHYDRATE) + " to "
                        + Numerals.down(aim * CARBOHYDRATE_MOST / KCAL_PER_G_CARBOHYDRATE) + " g",
                ATWATER));
        if (goalKcal > 0 && !eater.training().saysNone()) {
            lines.add(lifters("at least 3-5 g per kg", 3, 5, "gain", body, GAINING));
        } else if (goalKcal < 0 && !eater.training().saysNone()) {
            lines.add(lifters("2-5 g per kg", 2, 5, "lose fat", body, LOSING));
        }
        if (body.ageYears() >= OLDER_FROM_YEARS) {
            lines.add(new TargetLine(
                    "protein from 65 years on",
                    "1.0-1.2 g per kg a day for healthy people, 0.4 g per kg a meal",
                    OLDER));
        }
        lines.add(new TargetLine(
                "saturated fat", "at most " + saturated + " g: less than 10 % of energy", SATURATED_FAT));
        lines.add(new TargetLine(
                "sodium",
                "at most " + SODIUM_MOST_MG
                        + " mg (5.75 g of salt), the salt that you add included; 1500 mg are adequate",
                SODIUM));
        lines.add(new TargetLine(
                "sugar",
                "no limit on all of it, which counts that of fruit and milk; for free or added sugar, which food tables do not"
                        + " tell apart, less than 10 % of energy: " + sugar + " g",
                SUGAR));
        return List.copyOf(lines);
    }

    private static TargetLine lifters(
            String says, int leastPerKg, int mostPerKg, String goal, Body body, Citation source) {
        double kg = body.weight().kg();
        return new TargetLine(
                "carbohydrate, lifters who " + goal,
                says + ": " + Numerals.whole(leastPerKg * kg) + " to " + Numerals.whole(mostPerKg * kg) + " g",
                source);
    }
}

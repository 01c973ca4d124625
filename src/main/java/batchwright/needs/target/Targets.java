package batchwright.needs.target;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Reason;
import batchwright.limit.Scope;
import batchwright.limit.Setting;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Adjustments;
import batchwright.person.Box;
import batchwright.person.Eater;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a day must hold, and why: every limit on nutrients that a plan keeps is listed here, and nowhere else. Floors are rounded
 * up and ceilings down, so that whatever meets the printed number meets the published one.
 */
public record Targets(DayTarget day, ProteinFloor protein, CarbohydrateFloor carbohydrate) {
    private static final double BAND_PERCENT = 3;
    private static final double HOLD_PERCENT = 1;
    private static final double FAT_LEAST = 0.20; // of energy
    private static final double FAT_MOST = 0.35;
    private static final double KCAL_PER_G_FAT = 9; // general Atwater factor
    private static final int FRUIT_VEG_G = 400;
    private static final double CONTAINER_LEAST = 0.15; // of energy
    private static final double CONTAINER_MOST = 0.45;
    private static final double CONTAINER_PROTEIN_G_PER_KG = 0.25;
    /** The largest box that is usual in shops, 1200 ml, filled to 88 % for the lid and stirring: common practice. */
    private static final int CONTAINER_MOST_ML = 1050;
    /** What one sits down to at a meal; our choice. */
    private static final int CONTAINER_MOST_G = 900;

    private static final double PER_CENT = 100;

    /** A profile may ask for no wider band than this [% of the aim]. */
    private static final int WIDEST_BAND_PERCENT = 15;
    /**
     * No cure asks for less protein than this [g per kg of body weight]: the safe level for adults of WHO/FAO/UNU, Technical
     * Report Series 935, 2007 (figure from memory).
     */
    private static final double LEAST_PROTEIN_G_PER_KG = 0.83;

    private static final Citation PROFILE = new Citation("the eater's profile");

    public static Targets of(Eater eater, Energy total, WeeklyChange change) {
        int aim = Math.toIntExact(Math.round(total.kcal() + change.kcalADay()));
        ProteinFloor protein = HealthFloors.protein(eater, ProteinFloor.of(eater, change, aim));
        CarbohydrateFloor carbohydrate = CarbohydrateFloor.of(eater, aim, protein.grams());
        return new Targets(new Listing(eater, aim).target(protein, carbohydrate, change), protein, carbohydrate);
    }

    /** The same line by line, with sources. */
    public List<TargetLine> lines() {
        return day.limits().stream().map(TargetLine::of).toList();
    }

    /** Lists the limits of an eater in the order people see them. */
    private static final class Listing {
        private final Eater eater;
        private final Adjustments own;
        private final int aim;
        private final List<Limit> limits = new ArrayList<>();

        Listing(Eater eater, int aim) {
            this.eater = eater;
            this.own = eater.adjustments();
            this.aim = aim;
        }

        private DayTarget target(ProteinFloor protein, CarbohydrateFloor carbohydrate, WeeklyChange change) {
            energyBand();
            energyOnAverage(change);
            limit("protein floor", Scope.DAY, Nutrient.PROTEIN, Range.atLeast(Numerals.up(protein.grams())))
                    .because(protein.says(), protein.source())
                    .changedBy(proteinSetting(protein));
            limit("fat band", Scope.DAY, Nutrient.FAT, ofAim(FAT_LEAST, FAT_MOST, KCAL_PER_G_FAT))
                    .because("20-35 % of energy", new Citation("IOM, Dietary Reference Intakes, 2005, AMDR"))
                    .fixed();
            limit(
                            "carbohydrate floor",
                            Scope.DAY,
                            Nutrient.CARBOHYDRATE,
                            Range.atLeast(Numerals.down(carbohydrate.grams())))
                    .because(carbohydrate.says(), carbohydrate.source())
                    .changedBy(new Setting.Amount("carbohydrate", "g"));
            FibreFloor fibre = FibreFloor.of(eater, aim);
            limit("fibre floor", Scope.DAY, Nutrient.FIBRE, Range.atLeast(fibre.grams()))
                    .because(fibre.says(), fibre.source())
                    .changedBy(new Setting.Amount("fibre", "g"));
            limit(
                            "fruit and vegetables",
                            Scope.DAY,
                            Nutrient.FRUIT_VEG,
                            Range.atLeast(own.fruitVegG().orElse(FRUIT_VEG_G)))
                    .because("", own.fruitVegG().isPresent() ? PROFILE : new Citation("WHO, Healthy diet"))
                    .changedBy(new Setting.Amount("fruit_and_vegetables", "g"));
            limit("container share", Scope.CONTAINER, Nutrient.ENERGY, ofAim(CONTAINER_LEAST, CONTAINER_MOST, 1))
                    .because("15-45 % of the day", Citation.designChoice("a container is a meal"))
                    .fixed();
            limit("container protein", Scope.CONTAINER, Nutrient.PROTEIN, Range.atLeast(containerProtein()))
                    .because(
                            ProteinFloor.saysPerKg(CONTAINER_PROTEIN_G_PER_KG, eater.body()),
                            new Citation("ISSN position, J Int Soc Sports Nutr 2017;14:20"))
                    .fixed();
            box(
                    "container weight",
                    Nutrient.COOKED_WEIGHT,
                    own.box().mostG(),
                    CONTAINER_MOST_G,
                    "more is no meal for most people");
            box(
                    "container volume",
                    Nutrient.VOLUME,
                    own.box().mostMl(),
                    CONTAINER_MOST_ML,
                    "a box of 1.2 l that is not filled to the brim");
            density(own.box());
            return new DayTarget(aim, limits);
        }

        private void box(String name, Nutrient measured, OptionalInt own, int usual, String why) {
            limit(name, Scope.CONTAINER, measured, Range.atMost(own.orElse(usual)))
                    .because("", own.isPresent() ? PROFILE : Citation.designChoice(why))
                    .changedBy(new Setting.AtMost(name.replace(' ', '_'), measured.unit(), Box.HIGHEST));
        }

        /** Only when the profile asks for it. */
        private void density(Box box) {
            Range range = new Range(box.leastKcalPer100G().orElse(0), box.mostKcalPer100G());
            if (!range.isAny()) {
                limit("energy density", Scope.PER_100_G, Nutrient.ENERGY, range)
                        .because("", PROFILE)
                        .changedBy(new Setting.Between("container_density", "kcal per 100 g", Box.DENSEST));
            }
        }

        private void energyBand() {
            double percent = own.energyBandPercent().orElse(BAND_PERCENT);
            limit(
                            "energy band",
                            Scope.DAY,
                            Nutrient.ENERGY,
                            Range.between(
                                    Numerals.up(aim * (1 - percent / PER_CENT)),
                                    Numerals.down(aim * (1 + percent / PER_CENT))))
                    .because(
                            aim + " +- " + Numerals.plain(percent) + " %",
                            own.energyBandPercent().isPresent()
                                    ? PROFILE
                                    : Citation.designChoice("finer than 3 % is less than food tables can tell"))
                    .changedBy(new Setting.PercentOfAim("energy_band", aim, WIDEST_BAND_PERCENT));
        }

        /** Otherwise a plan would take the cheap end of the band every day, and price away what the goal asks for. */
        private void energyOnAverage(WeeklyChange change) {
            double percent = own.energyOnAveragePercent().orElse(change.gains() || change.loses() ? 0 : HOLD_PERCENT);
            int least = Numerals.up(aim * (1 - percent / PER_CENT));
            int most = Numerals.down(aim * (1 + percent / PER_CENT));
            limit("energy on average", Scope.MEAN_OF_DAYS, Nutrient.ENERGY, onAverage(change, least, most))
                    .because(
                            sideOfAim(change)
                                    + (percent == 0 ? "" : ", give or take " + Numerals.plain(percent) + " %"),
                            own.energyOnAveragePercent().isPresent()
                                    ? PROFILE
                                    : Citation.designChoice("days may differ, what they come to is the goal"))
                    .changedBy(new Setting.PercentOfAim("energy_on_average", aim, WIDEST_BAND_PERCENT));
        }

        private static Range onAverage(WeeklyChange change, int least, int most) {
            if (change.gains()) {
                return Range.atLeast(least);
            }
            return change.loses() ? Range.atMost(most) : Range.between(least, most);
        }

        private static String sideOfAim(WeeklyChange change) {
            if (change.gains()) {
                return "no less than the aim when gaining";
            }
            return change.loses() ? "no more than the aim when losing" : "the aim";
        }

        private Setting proteinSetting(ProteinFloor protein) {
            double safe = Math.min(protein.grams(), LEAST_PROTEIN_G_PER_KG * ReferenceWeight.kg(eater.body()));
            int lowest = Numerals.up(Math.max(safe, HealthFloors.leastProteinG(eater)));
            return new Setting.PerKg("protein", eater.body().weight().kg(), lowest);
        }

        private int containerProtein() {
            return Numerals.up(CONTAINER_PROTEIN_G_PER_KG * ProteinFloor.countedKg(eater.body()));
        }

        /** A share of the aim, for something with this many kcal per unit. */
        private Range ofAim(double least, double most, double kcalPerUnit) {
            return Range.between(Numerals.up(aim * least / kcalPerUnit), Numerals.down(aim * most / kcalPerUnit));
        }

        private Entry limit(String name, Scope scope, Nutrient measured, Range range) {
            return new Entry(new Limit(name, scope, measured, range, new Reason("", ""), Optional.empty()));
        }

        /** A limit on its way into the list. */
        private final class Entry {
            private final Limit limit;

            Entry(Limit limit) {
                this.limit = limit;
            }

            Entry because(String says, Citation source) {
                return new Entry(limit.because(new Reason(says, source.text())));
            }

            void changedBy(Setting setting) {
                limits.add(limit.changedBy(setting));
            }

            void fixed() {
                limits.add(limit);
            }
        }
    }
}

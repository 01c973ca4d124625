package batchwright.needs.goal;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.Experience;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * How fast people who train are advised to change weight.
 *
 * <ul>
 *   <li>Gain, novice to intermediate: 0.25-0.5 % of weight a week, a surplus of 10-20 % of the total (Iraki J et al. Sports
 *       2019;7:154). A careful start is 1500-2000 kJ a day (Slater GJ et al. Front Nutr 2019;6:131).
 *   <li>Gain, advanced: less of both (Iraki). That less means at most the lower ends is a choice of this program.
 *   <li>Lose: 0.5-1.0 % a week, slower when leaner (Helms ER et al. J Int Soc Sports Nutr 2014;11:20). For the lean, at most 0.7 %, the
 *       slower group of the trial it cites, which gained lean mass (Garthe I et al. Int J Sport Nutr Exerc Metab 2011;21:97-104). Who is
 *       lean, body fat under 15 % (men) or 25 % (women) by measure or tape, is a choice of this program.
 * </ul>
 *
 * @param leastPercent of weight a week, as a number without sign; 0 when the advice has no lower end
 * @param mostPercent of weight a week
 * @param leastOfTotal surplus as a part of the total; 0 when the advice has no lower end, or for loss
 * @param mostOfTotal surplus as a part of the total; infinite for loss
 * @param forWhom in words
 */
public record AdviceBand(
        double leastPercent,
        double mostPercent,
        double leastOfTotal,
        double mostOfTotal,
        String forWhom,
        Citation source) {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private static final double LEAN_PERCENT_MALE = 15;
    private static final double LEAN_PERCENT_FEMALE = 25;
    private static final double START_LEAST_KJ = 1500; // Slater 2019
    private static final double START_MOST_KJ = 2000;
    private static final double PER_CENT = 100;
    private static final double HUNDREDTHS = 100;

    private static final Citation IRAKI = new Citation("Iraki et al., Sports 2019;7:154");
    private static final Citation IRAKI_LESS = new Citation(
            "Iraki et al., Sports 2019;7:154: less for advanced; these figures are a choice of this program");
    private static final Citation HELMS = new Citation("Helms et al., J Int Soc Sports Nutr 2014;11:20");
    private static final Citation HELMS_LEAN =
            new Citation("Helms et al., J Int Soc Sports Nutr 2014;11:20: slower when"
                    + " leaner; 0.7 % by Garthe et al. 2011; who is lean is a choice of this program");

    private static final AdviceBand GAIN =
            new AdviceBand(0.25, 0.5, 0.10, 0.20, "novice and intermediate lifters", IRAKI);
    private static final AdviceBand GAIN_ADVANCED = new AdviceBand(0, 0.25, 0, 0.10, "advanced lifters", IRAKI_LESS);
    private static final AdviceBand LOSE = new AdviceBand(0.5, 1.0, 0, NO_LIMIT, "people who train", HELMS);
    private static final AdviceBand LOSE_LEAN =
            new AdviceBand(0.5, 0.7, 0, NO_LIMIT, "lean people who train", HELMS_LEAN);

    /** Empty when weight is held. */
    public static Optional<AdviceBand> of(WeeklyChange change, Body body, Optional<Experience> experience) {
        if (change.gains()) {
            return Optional.of(experience.filter(e -> e == Experience.ADVANCED).isPresent() ? GAIN_ADVANCED : GAIN);
        }
        return change.loses() ? Optional.of(isLean(body) ? LOSE_LEAN : LOSE) : Optional.empty();
    }

    private static boolean isLean(Body body) {
        double limit = body.sex() == Sex.MALE ? LEAN_PERCENT_MALE : LEAN_PERCENT_FEMALE;
        return body.fatTellsMoreThanBmi()
                && body.bodyFat()
                        .filter(fat -> Numerals.below(fat.percent(), limit))
                        .isPresent();
    }

    /** Whether a goal is faster, or its surplus larger, than advised. */
    public boolean isExceededBy(WeeklyChange change, Energy total) {
        return Numerals.above(Math.abs(change.percentAWeek()), mostPercent)
                || Numerals.above(change.kcalADay(), mostOfTotal * total.kcal());
    }

    /** Whether a goal is slower than advised, to the hundredth of a per cent that is printed. */
    public boolean isNotReachedBy(WeeklyChange change) {
        return Numerals.below(Math.round(Math.abs(change.percentAWeek()) * HUNDREDTHS) / HUNDREDTHS, leastPercent);
    }

    /** The band in words, with what it means for this body. */
    public String says(Body body, Energy total) {
        double kg = body.weight().kg() / PER_CENT;
        String rate = "for " + forWhom + ": " + range(leastPercent, mostPercent, Numerals::plain)
                + " % of weight a week, " + range(leastPercent * kg, mostPercent * kg, Numerals::twoDecimals) + " kg";
        if (Double.isInfinite(mostOfTotal)) {
            return rate;
        }
        String careful = leastOfTotal > 0
                ? "; a careful start is "
                        + Numerals.whole(Energy.ofKilojoules(START_LEAST_KJ).kcal()) + "-"
                        + Numerals.whole(Energy.ofKilojoules(START_MOST_KJ).kcal())
                        + " kcal (Slater et al., Front Nutr 2019;6:131)"
                : "";
        return rate + ", and a surplus of "
                + range(leastOfTotal * PER_CENT, mostOfTotal * PER_CENT, Numerals::plain) + " % of the total, "
                + range(leastOfTotal * total.kcal(), mostOfTotal * total.kcal(), Numerals::whole) + " kcal a day"
                + careful;
    }

    private static String range(double least, double most, DoubleFunction<String> words) {
        return least > 0 ? words.apply(least) + "-" + words.apply(most) : "at most " + words.apply(most);
    }
}

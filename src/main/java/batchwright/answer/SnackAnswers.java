package batchwright.answer;

import batchwright.needs.Needs;
import batchwright.plan.Snack;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What a search for the smallest snack came to.
 *
 * @param ask what was asked
 * @param currency of all prices
 * @param found best first; empty when no snack does what was asked
 * @param shortfall why none does; there exactly when none is found and nothing stopped the search
 * @param stopped the eater it is for, when a caution stops planning for that eater
 * @param atHome the best one of what is at home, when more than that was on offer
 */
public record SnackAnswers(
        Ask ask,
        Currency currency,
        List<Offer> found,
        Optional<Shortfall> shortfall,
        Optional<Needs> stopped,
        Optional<Offer> atHome) {
    public SnackAnswers {
        found = List.copyOf(found);
    }

    public SnackAnswers(Ask ask, Currency currency, List<Offer> found, Optional<Shortfall> shortfall) {
        this(ask, currency, found, shortfall, Optional.empty(), Optional.empty());
    }

    public static SnackAnswers stopped(Ask ask, Currency currency, Needs needs) {
        return new SnackAnswers(ask, currency, List.of(), Optional.empty(), Optional.of(needs), Optional.empty());
    }

    public SnackAnswers withAtHome(Optional<Offer> best) {
        return new SnackAnswers(ask, currency, found, shortfall, stopped, best);
    }

    /**
     * What was asked.
     *
     * @param kcal the calorie gap
     * @param proteinG least protein [g]
     * @param by what smallest means: energy, pieces, cost or grams
     * @param kinds most kinds of snack
     * @param budget most to spend
     * @param mostKcal most energy
     * @param fromHome whether only what is at home is on offer
     */
    public record Ask(
            BigDecimal kcal,
            BigDecimal proteinG,
            String by,
            int kinds,
            Optional<Money> budget,
            Optional<BigDecimal> mostKcal,
            boolean fromHome) {
        public Ask ofWhatIsAtHome() {
            return new Ask(kcal, proteinG, by, kinds, budget, mostKcal, true);
        }

        public Ask withBudget(Optional<Money> most) {
            return new Ask(kcal, proteinG, by, kinds, most, mostKcal, fromHome);
        }
    }

    /**
     * One snack.
     *
     * @param kcal energy
     * @param overKcal energy above the calorie gap; negative when short of it
     * @param costMinor by unit price of the cheapest packs [minor units], not rounded
     */
    public record Offer(
            List<Snack> items, BigDecimal kcal, BigDecimal proteinG, BigDecimal overKcal, BigDecimal costMinor) {
        public Offer {
            items = List.copyOf(items);
        }
    }

    /**
     * Why no snack does what was asked.
     *
     * @param missing energy, window (none lands between least and most energy) or protein
     * @param closest what comes closest
     * @param over the smallest that does all but goes beyond the most energy
     */
    public record Shortfall(
            Missing missing, Offer closest, BigDecimal kcalShort, BigDecimal proteinShortG, Optional<Offer> over) {}

    /** The side that fails. */
    public enum Missing {
        ENERGY,
        WINDOW,
        PROTEIN
    }
}

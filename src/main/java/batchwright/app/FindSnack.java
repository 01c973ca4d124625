package batchwright.app;

import batchwright.answer.SnackAnswers;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.UnitPrice;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.person.Wishes;
import batchwright.plan.Snack;
import batchwright.quantity.Money;
import batchwright.solve.snack.Smallest;
import batchwright.solve.snack.SnackAnswer;
import batchwright.solve.snack.SnackAsk;
import batchwright.solve.snack.SnackItem;
import batchwright.solve.snack.SnackResult;
import batchwright.solve.snack.SnackSearch;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The smallest snack that closes a calorie gap, from every measure that the files offer as a snack and a shop sells.
 *
 * <p>Energy and protein of one measure are rounded to 0.1 before the search, so that the sums that are shown are the sums that
 * were compared. A measure costs its share of the cheapest pack, not rounded, also when it is at home already: what is eaten
 * has to be bought again.
 */
public final class FindSnack {
    private static final int MOST_ANSWERS = 5;
    private static final int DECIMALS = 1;
    private final Kitchen kitchen;
    private final Map<String, Measure> byCode = new LinkedHashMap<>();
    private final List<SnackItem> items = new ArrayList<>();

    private FindSnack(Kitchen kitchen, Predicate<Food> allowed, boolean fromHome) {
        this.kitchen = kitchen;
        Stream<Measure> measures = kitchen.snackMeasures().stream().filter(m -> allowed.test(m.food()));
        if (fromHome) {
            smallest(measures).forEach(this::offerFromHome);
        } else {
            measures.forEach(this::offer);
        }
    }

    /** One measure of each food, so that no two share what is at home. */
    private static List<Measure> smallest(Stream<Measure> measures) {
        Map<Food, Measure> byFood = new LinkedHashMap<>();
        measures.forEach(measure ->
                byFood.merge(measure.food(), measure, (a, b) -> b.grams().compareTo(a.grams()) < 0 ? b : a));
        return List.copyOf(byFood.values());
    }

    /**
     * @param unlimited what is asked, but for the budget
     * @param budget most to spend
     * @param eater whose avoided foods and allergens are left out, and whose snacks are kept to; empty: everything on offer
     * @return what stops it, where a caution stops planning for that eater
     * @throws Refused when a file has an error, or no snack is on offer
     */
    public static SnackAnswers answer(
            Workspace workspace, SnackAnswers.Ask unlimited, Optional<TypedSum> budget, Optional<String> eater) {
        Kitchen kitchen = workspace.kitchen();
        SnackAnswers.Ask ask = unlimited.withBudget(budget.map(sum -> sum.in(kitchen.currency())));
        Optional<Needs> needs = eater.map(name -> NeedsCalculator.needsOf(new Eaters(workspace, kitchen).one(name)));
        if (needs.filter(Needs::stopsPlanning).isPresent()) {
            return SnackAnswers.stopped(ask, kitchen.currency(), needs.get());
        }
        Optional<Wishes> wishes = needs.map(found -> found.eater().wishes());
        Predicate<Food> allowed = food -> wishes.map(w -> w.offersAsSnack(food)).orElse(true);
        var find = new FindSnack(kitchen, allowed, ask.fromHome());
        if (find.items.isEmpty()) {
            throw ask.fromHome()
                    ? nothingAtHome()
                    : Refused.because(
                            "no snack is on offer",
                            "Give some measures a snack_max in foods/measures.csv and a price in foods/shop.csv.");
        }
        SnackAnswers answers = find.search(ask);
        return ask.fromHome() ? answers : answers.withAtHome(atHome(kitchen, allowed, ask));
    }

    /** What is at home comes first: the best of it, where it does what is asked. */
    private static Optional<SnackAnswers.Offer> atHome(Kitchen kitchen, Predicate<Food> allowed, SnackAnswers.Ask ask) {
        var home = new FindSnack(kitchen, allowed, true);
        return home.items.isEmpty()
                ? Optional.empty()
                : home.search(ask.ofWhatIsAtHome()).found().stream().findFirst();
    }

    private static Refused nothingAtHome() {
        return Refused.because(
                "no snack is at home",
                "Enter what there is in profiles/pantry.csv; what is past its date does not count.");
    }

    private void offer(Measure measure) {
        UnitPrice.of(kitchen, measure.food())
                .ifPresent(price -> offer(measure, price.minorOf(measure.grams()), measure.snackMost()));
    }

    /** As many as there are; what is not sold costs nothing to speak of. */
    private void offerFromHome(Measure measure) {
        int there = kitchen.pantryGrams(measure.food())
                .divide(asPurchased(measure), 0, RoundingMode.DOWN)
                .intValue();
        if (there > 0) {
            BigDecimal cost = UnitPrice.of(kitchen, measure.food())
                    .map(price -> price.minorOf(measure.grams()))
                    .orElse(BigDecimal.ZERO);
            offer(measure, cost, Math.min(there, measure.snackMost()));
        }
    }

    private static BigDecimal asPurchased(Measure measure) {
        return measure.grams().divide(measure.food().edibleShare(), MathContext.DECIMAL64);
    }

    private void offer(Measure measure, BigDecimal cost, int most) {
        String code = measure.food().id() + "." + measure.name();
        Nutrients one = measure.food().per100g().ofGrams(measure.grams());
        byCode.put(code, measure);
        items.add(new SnackItem(
                code,
                one.get(Nutrient.ENERGY).setScale(DECIMALS, RoundingMode.HALF_UP),
                one.get(Nutrient.PROTEIN).setScale(DECIMALS, RoundingMode.HALF_UP),
                measure.grams(),
                cost,
                most,
                kitchen.pantryGrams(measure.food()).compareTo(asPurchased(measure)) >= 0));
    }

    private SnackAnswers search(SnackAnswers.Ask ask) {
        SnackResult result = SnackSearch.search(
                items,
                new SnackAsk(
                        ask.kcal(),
                        ask.proteinG(),
                        ask.budget().map(Money::minor).map(BigDecimal::valueOf),
                        ask.mostKcal(),
                        ask.kinds(),
                        Smallest.valueOf(ask.by().toUpperCase(Locale.ROOT)),
                        MOST_ANSWERS));
        return result.match(new SnackResult.Cases<>() {
            @Override
            public SnackAnswers found(SnackResult.Found found) {
                List<SnackAnswers.Offer> offers =
                        found.answers().stream().map(FindSnack.this::offer).toList();
                return new SnackAnswers(ask, kitchen.currency(), offers, Optional.empty());
            }

            @Override
            public SnackAnswers notReachable(SnackResult.NotReachable none) {
                var shortfall = new SnackAnswers.Shortfall(
                        SnackAnswers.Missing.valueOf(none.missing().name()),
                        offer(none.closest()),
                        none.kcalShort(),
                        none.proteinShortG(),
                        none.over().map(FindSnack.this::offer));
                return new SnackAnswers(ask, kitchen.currency(), List.of(), Optional.of(shortfall));
            }
        });
    }

    private SnackAnswers.Offer offer(SnackAnswer answer) {
        List<Snack> snacks = new ArrayList<>();
        byCode.forEach((code, measure) -> {
            int count = answer.counts().getOrDefault(code, 0);
            if (count > 0) {
                snacks.add(new Snack(measure, count));
            }
        });
        return new SnackAnswers.Offer(snacks, answer.energyKcal(), answer.proteinG(), answer.overKcal(), answer.cost());
    }
}

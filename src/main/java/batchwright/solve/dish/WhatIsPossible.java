package batchwright.solve.dish;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishHint;
import batchwright.plan.DishHint.Kind;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.plan.Portion;
import batchwright.quantity.Money;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.Stop;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What can be had instead of containers that are not possible. Each hint asks one thing differently, by as little as does it,
 * and keeps all else, the budget too unless nothing at all is possible within it. It is found by solving, and offered to try
 * only if it solves.
 */
final class WhatIsPossible {
    /** A millionth: amounts are decimal, but shares of a mix are cut off after 16 digits. */
    private static final BigDecimal HAIR = new BigDecimal("0.000001");

    /** A smaller difference in protein [g] does not show. */
    private static final BigDecimal TELLS = new BigDecimal("0.1");

    /** More than any container holds [kcal]. */
    private static final BigDecimal FAR = BigDecimal.valueOf(1_000_000);

    private final DishRequest asked;
    private final Stop stop;

    WhatIsPossible(DishRequest asked, Stop stop) {
        this.asked = asked;
        this.stop = stop;
    }

    /** @param cheapest cost of containers as asked, when only the budget is in the way */
    List<DishHint> hints(Optional<Money> cheapest) {
        List<DishHint> hints = new ArrayList<>();
        cheapest.ifPresent(cost -> hints.add(new DishHint(
                Kind.BUDGET, "", BigDecimal.valueOf(cost.minor()), Optional.of(asked.withBudget(Optional.of(cost))))));
        fewerContainers().ifPresent(hints::add);
        Optional<DishHint> protein = protein(asked);
        protein.ifPresent(hints::add);
        protein.flatMap(this::moreProteinForMoney).ifPresent(hints::add);
        energyAbove(asked).ifPresent(hints::add);
        energyBelow(asked).ifPresent(hints::add);
        fat(asked).ifPresent(hints::add);
        hints.addAll(freeParts());
        if (hints.isEmpty()) {
            nearest().ifPresent(hints::add);
        }
        if (hints.isEmpty() && asked.budget().isPresent()) {
            return new WhatIsPossible(asked.withBudget(Optional.empty()), stop).hints(Optional.empty());
        }
        hints.addAll(notSold());
        return hints;
    }

    private boolean solves(DishRequest request) {
        return any(request).isPresent();
    }

    /** Any container as asked, whatever it costs within the budget. */
    private Optional<Nutrients> any(DishRequest request) {
        return best(request, Nutrient.ENERGY, true);
    }

    /** What a container holds that has the most or the least of a nutrient. */
    private Optional<Nutrients> best(DishRequest request, Nutrient nutrient, boolean most) {
        var model = new FillModel(request);
        SearchResult<double[]> result = most ? model.most(nutrient, stop) : model.least(nutrient, stop);
        return result.state() == SearchResult.State.DONE
                ? result.best().map(values -> holds(request, model.stepsIn(values)))
                : Optional.empty();
    }

    private static Nutrients holds(DishRequest request, List<Integer> steps) {
        Nutrients sum = Nutrients.NONE;
        for (int i = 0; i < steps.size(); i++) {
            Part part = request.dish().parts().get(i);
            sum = sum.plus(new Portion(part, steps.get(i) * part.stepGrams()).nutrients());
        }
        return sum;
    }

    /** More containers never cost less, so the most is found by halving. */
    private Optional<DishHint> fewerContainers() {
        int possible = 0;
        int impossible = asked.containers();
        while (impossible - possible > 1) {
            int middle = (possible + impossible) / 2;
            if (solves(asked.withContainers(middle))) {
                possible = middle;
            } else {
                impossible = middle;
            }
        }
        return possible == 0
                ? Optional.empty()
                : Optional.of(new DishHint(
                        Kind.CONTAINERS,
                        "",
                        BigDecimal.valueOf(possible),
                        Optional.of(asked.withContainers(possible))));
    }

    /** The most protein, when some was asked for; in the request to try, whole grams. */
    private Optional<DishHint> protein(DishRequest request) {
        ContainerWish wish = request.wish();
        return wish.proteinLeastG()
                .flatMap(ignored -> best(request.withWish(wish.withProtein(Optional.empty())), Nutrient.PROTEIN, true)
                        .map(holds -> {
                            BigDecimal most = holds.get(Nutrient.PROTEIN);
                            return hint(
                                    Kind.MOST_PROTEIN,
                                    most,
                                    request.withWish(wish.withProtein(Optional.of(floor(most)))));
                        }));
    }

    /** Where the budget is a limit of the protein, too. */
    private Optional<DishHint> moreProteinForMoney(DishHint within) {
        return Optional.of(asked.withBudget(Optional.empty()))
                .filter(free -> asked.budget().isPresent())
                .flatMap(this::protein)
                .filter(more -> more.reached().subtract(within.reached()).compareTo(TELLS) >= 0)
                .map(more -> new DishHint(Kind.MOST_PROTEIN_FOR_MORE, "", more.reached(), more.tryThis()));
    }

    private Optional<DishHint> fat(DishRequest request) {
        ContainerWish wish = request.wish();
        return wish.fatMostG()
                .flatMap(ignored -> best(request.withWish(wish.withFat(Optional.empty())), Nutrient.FAT, false)
                        .map(holds -> {
                            BigDecimal least = holds.get(Nutrient.FAT);
                            return hint(
                                    Kind.LEAST_FAT, least, request.withWish(wish.withFat(Optional.of(ceiling(least)))));
                        }));
    }

    private Optional<DishHint> energyAbove(DishRequest request) {
        return request.wish().energy().flatMap(band -> {
            var above = EnergyBand.between(band.mostKcal(), band.mostKcal().max(FAR));
            return energy(request, above, false, band, Kind.ENERGY_ABOVE);
        });
    }

    private Optional<DishHint> energyBelow(DishRequest request) {
        return request.wish().energy().flatMap(band -> {
            var below = EnergyBand.between(BigDecimal.ZERO, band.leastKcal());
            return energy(request, below, true, band, Kind.ENERGY_BELOW);
        });
    }

    private Optional<DishHint> energy(DishRequest request, EnergyBand where, boolean most, EnergyBand band, Kind kind) {
        ContainerWish wish = request.wish();
        return best(request.withWish(wish.withEnergy(Optional.of(where))), Nutrient.ENERGY, most)
                .map(holds -> {
                    BigDecimal kcal = holds.get(Nutrient.ENERGY);
                    return hint(kind, kcal, request.withWish(wish.withEnergy(Optional.of(band.reaching(kcal)))));
                });
    }

    private DishHint hint(Kind kind, BigDecimal reached, DishRequest request) {
        return new DishHint(kind, "", reached, Optional.of(request).filter(this::solves));
    }

    private static BigDecimal floor(BigDecimal value) {
        return value.add(HAIR).setScale(0, RoundingMode.FLOOR);
    }

    private static BigDecimal ceiling(BigDecimal value) {
        return value.subtract(HAIR).setScale(0, RoundingMode.CEILING);
    }

    /** Parts that were forced in or out, each alone free again. */
    private List<DishHint> freeParts() {
        return Stream.concat(asked.with().stream(), asked.without().stream())
                .sorted()
                .flatMap(part ->
                        Optional.of(asked.withParts(without(asked.with(), part), without(asked.without(), part)))
                                .filter(this::solves)
                                .map(free -> new DishHint(Kind.PART_FREE, part, BigDecimal.ZERO, Optional.of(free)))
                                .stream())
                .toList();
    }

    private static Set<String> without(Set<String> names, String name) {
        return names.stream().filter(n -> !n.equals(name)).collect(Collectors.toUnmodifiableSet());
    }

    /** When no single change will do: the nearest energy, with as much protein as was asked or as it can have. */
    private Optional<DishHint> nearest() {
        return asked.wish().energy().flatMap(band -> {
            DishRequest energyOnly = asked.withWish(asked.wish()
                    .withProtein(Optional.empty())
                    .withFat(Optional.empty())
                    .withEnergy(Optional.of(band)));
            Optional<DishRequest> there = solves(energyOnly)
                    ? Optional.of(energyOnly)
                    : Stream.of(energyAbove(energyOnly), energyBelow(energyOnly))
                            .flatMap(Optional::stream)
                            .min(Comparator.comparing(hint ->
                                    hint.reached().subtract(band.aimKcal()).abs()))
                            .flatMap(DishHint::tryThis);
            return there.map(this::withWhatProteinItCan);
        });
    }

    private DishHint withWhatProteinItCan(DishRequest request) {
        DishRequest wished =
                request.withWish(request.wish().withProtein(asked.wish().proteinLeastG()));
        DishRequest possible = solves(wished)
                ? wished
                : protein(wished).flatMap(DishHint::tryThis).orElse(request);
        BigDecimal kcal = any(possible).map(n -> n.get(Nutrient.ENERGY)).orElse(BigDecimal.ZERO);
        return new DishHint(Kind.NEAREST, "", kcal, Optional.of(possible));
    }

    /**
     * Foods that no shop sells and of which there is too little at home: those that every container holds, and when containers as
     * asked only fail for want of food, those of optional parts too.
     */
    private List<DishHint> notSold() {
        DishRequest free = asked.withBudget(Optional.empty());
        boolean otherwise = !solves(free)
                && FillModel.whateverIsSold(free)
                        .least(Nutrient.ENERGY, stop)
                        .best()
                        .isPresent();
        var needed = new Needed(asked);
        return needed.parts().stream()
                .filter(asked::mayHold)
                .filter(part -> otherwise || !asked.mayLeaveOut(part))
                .flatMap(part -> part.shares().keySet().stream()
                        .filter(food -> Needed.leastSteps(part) * needed.usedByStep(part, food)
                                > asked.kitchen().pantryGrams(food).doubleValue() + Needed.HAIR))
                .filter(food -> asked.kitchen().packsOf(food).isEmpty())
                .distinct()
                .map(food -> new DishHint(Kind.NOT_SOLD, food.name(), BigDecimal.ZERO, Optional.empty()))
                .toList();
    }
}

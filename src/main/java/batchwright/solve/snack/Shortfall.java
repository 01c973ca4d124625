package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.ToLongFunction;

/** Finds out why no snack does what was asked, and what comes closest. */
final class Shortfall {
    private final List<Piece> all;
    private final Units units;
    private final SnackAsk ask;
    private final Window window;

    Shortfall(List<Piece> all, Units units, SnackAsk ask) {
        this.all = all;
        this.units = units;
        this.ask = ask;
        window = units.window(ask);
    }

    SnackResult.NotReachable explain() {
        Optional<Choice> enoughEnergy = leastEnergy(window.withProtein(0));
        if (enoughEnergy.isPresent()) {
            return notReachable(SnackResult.Missing.PROTEIN, mostProtein(enoughEnergy.get()));
        }
        Window unlimited = window.withProtein(0).withEnergy(window.energyLeast(), Window.NO_LIMIT);
        boolean beyond = leastEnergy(unlimited).isPresent();
        return notReachable(beyond ? SnackResult.Missing.WINDOW : SnackResult.Missing.ENERGY, mostEnergy());
    }

    private SnackResult.NotReachable notReachable(SnackResult.Missing missing, Choice choice) {
        SnackAnswer closest = units.answer(choice, ask);
        return new SnackResult.NotReachable(
                missing,
                closest,
                ask.leastKcal().subtract(closest.energyKcal()).max(BigDecimal.ZERO),
                ask.proteinG().subtract(closest.proteinG()).max(BigDecimal.ZERO),
                leastEnergy(window.withEnergy(window.energyLeast(), Window.NO_LIMIT))
                        .map(over -> units.answer(over, ask)));
    }

    /** The snack with most protein of those with enough energy, whatever protein was asked for. */
    private Choice mostProtein(Choice enoughEnergy) {
        return furthest(
                enoughEnergy,
                window.proteinLeast() - 1,
                protein -> leastEnergy(window.withProtein(protein)),
                Choice::protein);
    }

    /** The snack with most energy of those that have too little, whatever their protein. */
    private Choice mostEnergy() {
        long most = window.energyLeast() - 1;
        return furthest(
                new Choice(List.of(), new int[0]),
                most,
                energy -> leastEnergy(window.withProtein(0).withEnergy(energy, most)),
                Choice::energy);
    }

    /** Halves the distance between what is known to be reached and the most that could be, until they meet. */
    private static Choice furthest(
            Choice start, long most, LongFunction<Optional<Choice>> reach, ToLongFunction<Choice> figure) {
        Choice furthest = start;
        long beyond = most;
        while (figure.applyAsLong(furthest) < beyond) {
            long reached = figure.applyAsLong(furthest);
            long middle = reached + (beyond - reached + 1) / 2;
            Optional<Choice> further = reach.apply(middle);
            if (further.isPresent()) {
                furthest = further.get();
            } else {
                beyond = middle - 1;
            }
        }
        return furthest;
    }

    private Optional<Choice> leastEnergy(Window wanted) {
        return DepthFirst.search(units.needed(all, wanted), wanted, Smallest.ENERGY, 1).stream()
                .findFirst();
    }
}

package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.Optional;

/** Short ways to say items, asks and results in tests. */
final class Snacks {
    private Snacks() {}

    static SnackItem item(String code, String kcal, String protein, String grams, String cost, int most) {
        return new SnackItem(
                code,
                new BigDecimal(kcal),
                new BigDecimal(protein),
                new BigDecimal(grams),
                new BigDecimal(cost),
                most,
                false);
    }

    static SnackItem atHome(SnackItem item) {
        return new SnackItem(
                item.code(), item.energyKcal(), item.proteinG(), item.grams(), item.cost(), item.most(), true);
    }

    /** An ask without limits for five answers. */
    static SnackAsk ask(String kcal, Smallest smallest) {
        return new SnackAsk(
                new BigDecimal(kcal),
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.empty(),
                SnackAsk.NO_LIMIT,
                smallest,
                5);
    }

    static SnackAsk withKcal(SnackAsk ask, BigDecimal kcal) {
        return new SnackAsk(
                kcal, ask.proteinG(), ask.budget(), ask.mostKcal(), ask.mostKinds(), ask.smallest(), ask.answers());
    }

    static SnackAsk withProtein(SnackAsk ask, String protein) {
        return new SnackAsk(
                ask.energyKcal(),
                new BigDecimal(protein),
                ask.budget(),
                ask.mostKcal(),
                ask.mostKinds(),
                ask.smallest(),
                ask.answers());
    }

    static SnackAsk withMostKcal(SnackAsk ask, String most) {
        return new SnackAsk(
                ask.energyKcal(),
                ask.proteinG(),
                ask.budget(),
                Optional.of(new BigDecimal(most)),
                ask.mostKinds(),
                ask.smallest(),
                ask.answers());
    }

    static SnackAsk withBudget(SnackAsk ask, String budget) {
        return new SnackAsk(
                ask.energyKcal(),
                ask.proteinG(),
                Optional.of(new BigDecimal(budget)),
                ask.mostKcal(),
                ask.mostKinds(),
                ask.smallest(),
                ask.answers());
    }

    static SnackAsk withKinds(SnackAsk ask, int kinds) {
        return new SnackAsk(
                ask.energyKcal(), ask.proteinG(), ask.budget(), ask.mostKcal(), kinds, ask.smallest(), ask.answers());
    }

    static Optional<SnackResult.Found> found(SnackResult result) {
        return result.match(new SnackResult.Cases<>() {
            @Override
            public Optional<SnackResult.Found> found(SnackResult.Found found) {
                return Optional.of(found);
            }

            @Override
            public Optional<SnackResult.Found> notReachable(SnackResult.NotReachable notReachable) {
                return Optional.empty();
            }
        });
    }

    static Optional<SnackResult.NotReachable> notReachable(SnackResult result) {
        return result.match(new SnackResult.Cases<>() {
            @Override
            public Optional<SnackResult.NotReachable> found(SnackResult.Found found) {
                return Optional.empty();
            }

            @Override
            public Optional<SnackResult.NotReachable> notReachable(SnackResult.NotReachable notReachable) {
                return Optional.of(notReachable);
            }
        });
    }
}

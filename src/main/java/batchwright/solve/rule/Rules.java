package batchwright.solve.rule;

import java.util.List;

/** Every rule of a plan but "avoid", which the {@link Menu} keeps. */
public final class Rules {
    public static final List<Rule> ALL = List.of(
            new DayLimitsRule(),
            new MeanLimitsRule(),
            new ContainerLimitsRule(),
            new ContainersADayRule(),
            new MealsRule(),
            new SameDishRule(),
            new PartRangeRule(),
            new SwapRule(),
            new DishCountRule(),
            new HandsOnRule(),
            new SnackLimitsRule(),
            new SnackPairsRule(),
            new KeepingRule(),
            new StockRule(),
            new ShopsRule(),
            new OneKindRule(),
            new UseByRule(),
            new BudgetRule());

    private Rules() {}
}

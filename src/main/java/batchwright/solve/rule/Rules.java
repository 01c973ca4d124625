package batchwright.solve.rule;

import java.util.List;

/** Every rule of a plan but "avoid", which the {@link Menu} keeps. */
public final class Rules {
    public static final List<Rule> ALL = List.of(
            new DayLimits(),
            new MeanLimits(),
            new ContainerLimits(),
            new ContainersADay(),
            new PartRange(),
            new DishCount(),
            new SnackLimits(),
            new Keeping(),
            new Stock(),
            new UseBy(),
            new Budget());

    private Rules() {}
}

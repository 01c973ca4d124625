package batchwright.solve.rule;

import java.util.List;

/** Every rule of a plan but "avoid", which the {@link Menu} keeps. */
public final class Rules {
    public static final List<Rule> ALL = List.of(
            DayRule.ENERGY_BAND,
            DayRule.PROTEIN_FLOOR,
            DayRule.FAT_BAND,
            DayRule.FIBRE_FLOOR,
            DayRule.FRUIT_AND_VEGETABLES,
            ContainerRule.CONTAINER_SHARE,
            ContainerRule.CONTAINER_PROTEIN,
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

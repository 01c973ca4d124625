package batchwright.app.desk;

import batchwright.app.DishesWanted;
import batchwright.app.TypedSum;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;

/** Somebody who moves one slider after another. */
final class SliderWalk {
    private static final int MOVES = 8;
    private static final int KCAL_A_STEP = 50;
    private static final List<Set<String>> SNACKS = List.of(Set.of("banana", "peanuts"), Set.of("banana"), Set.of());

    private final RandomGenerator random;
    private final String eater;
    private final List<String> dishes;
    private final boolean loses;
    private Sliders now;

    /**
     * @param dishes that are locked and forbidden now and then
     * @param loses whether the eater loses weight rather than gains
     */
    SliderWalk(Sliders start, String eater, List<String> dishes, boolean loses, RandomGenerator random) {
        this.now = start;
        this.eater = eater;
        this.dishes = dishes;
        this.loses = loses;
        this.random = random;
    }

    /** The position after one more move. */
    Sliders next() {
        EaterSliders mine = now.eater(eater);
        now = switch (random.nextInt(MOVES)) {
            case 0 -> now.withEater(eater, mine.withGoalKcal((loses ? -1 : 1) * KCAL_A_STEP * (2 + random.nextInt(7))));
            case 1 -> now.withEater(eater, mine.withProtein((10 + random.nextInt(10)) / 10.0));
            case 2 -> now.withEater(eater, mine.withEnergyBand(2 + random.nextInt(6)));
            case 3 -> now.withEater(eater, mine.withContainersADay(2 + random.nextInt(3)));
            case 4 -> now.withEater(eater, mine.withSnacks(SNACKS.get(random.nextInt(SNACKS.size()))));
            case 5 -> now.withDays(1 + random.nextInt(3));
            case 6 -> now.withBudget(budget());
            default -> now.withDishes(dishes());
        };
        return now;
    }

    private Optional<TypedSum> budget() {
        return random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(new TypedSum(BigDecimal.valueOf(20 + random.nextInt(50))));
    }

    /** One more locked or forbidden, or none any more. */
    private DishesWanted dishes() {
        DishesWanted before = now.dishes();
        List<String> with = new ArrayList<>(before.with());
        List<String> without = new ArrayList<>(before.without());
        String dish = dishes.get(random.nextInt(dishes.size()));
        if (with.contains(dish) || without.contains(dish)) {
            with.clear();
            without.clear();
        } else {
            (random.nextBoolean() ? with : without).add(dish);
        }
        return new DishesWanted(before.only(), with, without, before.lastTime());
    }
}

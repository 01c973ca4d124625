package batchwright.solve.rule;

import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.HandTimes;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.solve.mip.Expression;
import java.util.List;

/**
 * Cooking takes the hands no longer than the kitchen allows, nor longer than can be done within the time of a session. Rows in minutes: one for each step that takes the hands, rounded up to whole
 * minutes as it is printed, and one for all of them. Without a limit there is no row and no column.
 */
public record HandsOnRule() implements Rule {
    /** More minutes than any step takes. */
    private static final double MANY = 10_000;

    @Override
    public void addTo(Draft draft) {
        Equipment equipment = draft.request().kitchen().equipment();
        equipment.mostHandsOnMinutes().ifPresent(most -> new Minutes(draft, equipment).limit(most));
    }

    /** Makes the rows of one draft. */
    private static final class Minutes {
        private final Draft draft;
        private final Equipment equipment;
        private final Expression all = new Expression();

        Minutes(Draft draft, Equipment equipment) {
            this.draft = draft;
            this.equipment = equipment;
        }

        void limit(int most) {
            var wipe = draft.model().column("hands.wipe", 0, 1, false, draft.rank());
            for (Dish dish : cooked()) {
                if (HandTimes.areCounted(dish)) {
                    draft.model()
                            .atMost(
                                    "hands.wipe." + dish.id(),
                                    new Expression().plus(draft.cooked(dish), 1).plus(wipe, -1),
                                    0);
                }
                dish(dish);
            }
            all.plus(wipe, HandTimes.WIPE);
            draft.model().atMost("hands_on_minutes", all, most);
        }

        /** What is left from before takes no hands. */
        private List<Dish> cooked() {
            return draft.menu().dishes().stream()
                    .filter(dish -> !draft.request().left().has(dish))
                    .toList();
        }

        private void dish(Dish dish) {
            var washing = new Expression().plus(draft.cooked(dish), HandTimes.WASH_BOARD);
            for (int number = 1; number <= dish.steps().size(); number++) {
                Step step = dish.steps().get(number - 1);
                if (!step.dayBefore()) {
                    Expression done = done(dish, step, number);
                    step(dish, step, number, done);
                    washing.plus(done, HandTimes.washing(dish, step));
                }
            }
            boolean counted = HandTimes.areCounted(dish);
            if (HandTimes.filling(dish).isEmpty()) {
                whole("hands.fill." + dish.id(), counted ? portioning(dish) : containers(dish));
            }
            if (counted) {
                whole("hands.wash." + dish.id(), washing);
            }
        }

        /** 1 when the step is done, else 0: it falls away where no container has any of its parts. */
        private Expression done(Dish dish, Step step, int number) {
            boolean always = step.parts().isEmpty()
                    || dish.parts().stream().anyMatch(part -> step.parts().contains(part.name()) && !part.optional());
            if (always) {
                return draft.cooked(dish);
            }
            var done = draft.model().column("hands.done." + number + "." + dish.id(), 0, 1, false, draft.rank());
            draft.request().seats().stream()
                    .filter(seat -> draft.menu().dishes(seat).contains(dish))
                    .forEach(seat -> dish.parts().stream()
                            .filter(part -> step.parts().contains(part.name()))
                            .forEach(part -> draft.kept(seat, dish, part)
                                    .ifPresent(kept -> draft.model()
                                            .atMost(
                                                    "hands.done." + number + "." + part.name() + "." + dish.id() + "."
                                                            + seat.eater().id(),
                                                    Expression.of(kept).plus(done, -1),
                                                    0))));
            return Expression.of(done);
        }

        private void step(Dish dish, Step step, int number, Expression done) {
            Way way = step.way(equipment).orElse(step.way());
            String name = "hands." + number + "." + dish.id();
            var hands = new Expression();
            boolean takesHands = false;
            for (TimeLaw law : way.laws()) {
                if (law instanceof TimeLaw.HandWork work) {
                    hands.plus(done, work.minutes());
                    work.perKg()
                            .forEach((what, minutes) -> hands.plus(
                                    Amounts.boughtGrams(draft, dish, what), minutes / HandTimes.GRAMS_PER_KG));
                    takesHands = true;
                } else if (law instanceof TimeLaw.Loads loads && way.uses(Appliance.BURNER)) {
                    loads(name, dish, loads, done, hands);
                    takesHands = true;
                } else if (law instanceof TimeLaw.ForFive five && five.handsOn() > 0) {
                    forFive(name, dish, five, done);
                }
            }
            if (step.fills() && !way.isForFive()) {
                hands.plus(portioning(dish), 1);
                takesHands = true;
            }
            if (takesHands) {
                whole(name, hands);
            }
        }

        private void loads(String name, Dish dish, TimeLaw.Loads loads, Expression done, Expression hands) {
            var rounds = draft.model().column(name + ".rounds", 0, MANY, true, draft.rank());
            double grams = loads.grams() * HandTimes.panSize(equipment) * HandTimes.pansAtOnce(equipment);
            var left = new Expression();
            loads.of().forEach(what -> left.plus(Amounts.grams(draft, dish, what), 1));
            draft.model().atMost(name + ".loads", left.plus(rounds, -grams), grams * HandTimes.TOLERANCE);
            draft.model().atMost(name + ".once", new Expression().plus(done, 1).plus(rounds, -1), 0);
            hands.plus(done, loads.minutes() - HandTimes.BETWEEN_LOADS)
                    .plus(rounds, loads.each() + HandTimes.BETWEEN_LOADS);
        }

        /** As written at least, and of more containers in proportion. */
        private void forFive(String name, Dish dish, TimeLaw.ForFive five, Expression done) {
            var minutes = draft.model().column(name, 0, MANY, true, draft.rank());
            draft.model()
                    .atMost(
                            name + ".least",
                            new Expression().plus(done, five.handsOn()).plus(minutes, -1),
                            0);
            // Where the step falls away, nothing of it is asked.
            double most = most(dish) * five.handsOn() / (double) Step.FOR_CONTAINERS;
            draft.model()
                    .atMost(
                            name + ".grown",
                            new Expression()
                                    .plus(containers(dish), five.handsOn() / (double) Step.FOR_CONTAINERS)
                                    .plus(done, most)
                                    .plus(minutes, -1),
                            most + HandTimes.TOLERANCE);
            all.plus(minutes, 1);
        }

        private int most(Dish dish) {
            return draft.request().seats().stream()
                    .filter(seat -> draft.menu().dishes(seat).contains(dish))
                    .mapToInt(seat -> draft.mostContainers(seat, dish))
                    .sum();
        }

        private Expression containers(Dish dish) {
            var containers = new Expression();
            draft.request().seats().stream()
                    .filter(seat -> draft.menu().dishes(seat).contains(dish))
                    .forEach(seat -> containers.plus(draft.containers(seat, dish), 1));
            return containers;
        }

        /** Each container, and each component that is in it. */
        private Expression portioning(Dish dish) {
            var minutes = new Expression()
                    .plus(draft.cooked(dish), HandTimes.PORTION_START)
                    .plus(containers(dish), HandTimes.PORTION_CONTAINER);
            draft.request().seats().stream()
                    .filter(seat -> draft.menu().dishes(seat).contains(dish))
                    .forEach(seat -> dish.parts().forEach(part -> {
                        Expression count = draft.containers(seat, dish);
                        var kept = draft.kept(seat, dish, part);
                        if (kept.isEmpty()) {
                            minutes.plus(count, HandTimes.PORTION_PART);
                            return;
                        }
                        double most = draft.mostContainers(seat, dish);
                        String name = "hands.with." + part.name() + "." + dish.id() + "."
                                + seat.eater().id();
                        var with = draft.model().column(name, 0, most, false, draft.rank());
                        draft.model()
                                .atMost(
                                        name,
                                        new Expression()
                                                .plus(count, 1)
                                                .plus(kept.get(), most)
                                                .plus(with, -1),
                                        most);
                        minutes.plus(with, HandTimes.PORTION_PART);
                    }));
            return minutes;
        }

        /** Counts minutes, rounded up. */
        private void whole(String name, Expression minutes) {
            var whole = draft.model().column(name, 0, MANY, true, draft.rank());
            draft.model()
                    .atMost(name + ".whole", new Expression().plus(minutes, 1).plus(whole, -1), HandTimes.TOLERANCE);
            all.plus(whole, 1);
        }
    }
}

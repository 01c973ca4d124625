package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/**
 * What does not freeze is eaten within its fridge days. Over totals: the containers of such dishes fit into the first days.
 * Which day gets which container is settled when days are laid out.
 */
public record KeepingRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            for (int day = 1; day < draft.request().days(); day++) {
                earlyEnough(draft, seat, day);
                enoughThatKeep(draft, seat, day + 1);
            }
        }
    }

    /** What does not keep beyond this day is eaten up to it. */
    private static void earlyEnough(Draft draft, Seat seat, int day) {
        var early = new Expression();
        for (Dish dish : draft.menu().dishes(seat)) {
            if (!dish.keepsUntil(day + 1)) {
                early.plus(draft.containers(seat, dish), 1);
            }
        }
        double room = (double) seat.eater().wishes().containersADay() * day;
        draft.model().atMost("keeping.day" + day + "." + seat.eater().id(), early, room);
    }

    /** The dishes that keep until this day can fill it, although none is served more than so often a day. */
    private static void enoughThatKeep(Draft draft, Seat seat, int day) {
        int aDay = seat.eater().wishes().containersADay();
        var room = new Expression();
        for (Dish dish : draft.menu().dishes(seat)) {
            if (dish.keepsUntil(day)) {
                room.plus(draft.cooked(dish), seat.eater().wishes().mostADay(dish));
            }
        }
        draft.model().atLeast("keeping.fills_day" + day + "." + seat.eater().id(), room, aDay);
    }
}

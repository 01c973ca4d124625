package batchwright.solve.whole;

import batchwright.food.Dish;
import batchwright.plan.Seat;

/** An eater and a dish that may be served to them. */
record Who(Seat seat, Dish dish) {
    /** For the names of columns and rows. */
    String name() {
        return dish.id() + "." + seat.eater().id();
    }
}

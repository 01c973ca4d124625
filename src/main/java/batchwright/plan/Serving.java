package batchwright.plan;

import batchwright.food.Dish;

/** Containers of one dish on one day. */
public record Serving(Dish dish, int count, Storage from) {
    /** Where the container waited. */
    public enum Storage {
        FRIDGE,
        FREEZER
    }
}

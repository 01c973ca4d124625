package batchwright.audit;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.person.Eater;
import batchwright.plan.Fill;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.util.Optional;

/** What the files say of the things a plan names. A plan's own copy of a dish, food or price is never believed. */
record Known(PlanRequest request) {
    private Kitchen kitchen() {
        return request.kitchen();
    }

    Optional<Seat> seat(Eater named) {
        return request.seats().stream()
                .filter(seat -> seat.eater().id().equals(named.id()))
                .findFirst();
    }

    /** The seat of whom the containers are for; empty when they are for nobody in particular. */
    Optional<Seat> seat(Fill fill) {
        return fill.eater().flatMap(this::seat);
    }

    Optional<Food> food(Food named) {
        return Optional.ofNullable(kitchen().foods().get(named.id()));
    }

    /** The dish of the files, with the swaps that a plan makes in it; empty where the files do not allow these. */
    Optional<Dish> dish(Dish named) {
        Optional<Dish> written = kitchen().dish(named.id());
        return named.swaps().isEmpty()
                ? written
                : written.flatMap(dish -> Variant.of(dish, named.swaps())).map(Variant::dish);
    }

    /** The part of that name in the files' dish. */
    Optional<Part> part(Dish dish, Part named) {
        return dish(dish)
                .flatMap(filed -> filed.parts().stream()
                        .filter(part -> part.name().equals(named.name()))
                        .findFirst());
    }

    Optional<Measure> measure(Measure named) {
        return kitchen().measure(named.food(), named.name());
    }

    /** The same line of the shop's file, with the price that stands there. */
    Optional<Pack> pack(Pack named) {
        return kitchen().packsOf(named.food()).stream()
                .filter(pack -> pack.shop().equals(named.shop())
                        && pack.label().equals(named.label())
                        && pack.grams().compareTo(named.grams()) == 0
                        && pack.seen().equals(named.seen()))
                .findFirst();
    }
}

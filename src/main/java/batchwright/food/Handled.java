package batchwright.food;

import java.math.BigDecimal;
import java.util.Optional;

/** Something that a step handles. How much of it there is follows from how the containers are filled. */
public sealed interface Handled {
    /** One result for each kind. */
    interface Cases<R> {
        R food(OfFood food);

        R part(OfPart part);

        R staple(OfStaple staple);
    }

    <R> R match(Cases<R> cases);

    /** As people say it. */
    String name();

    /**
     * A food of the dish.
     *
     * @param part name of the one part whose food it is; empty for all of them
     * @param share how much of it, above 0 and at most 1
     */
    record OfFood(Food food, Optional<String> part, BigDecimal share) implements Handled {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.food(this);
        }

        @Override
        public String name() {
            return food.name();
        }
    }

    /**
     * Everything in a part of the dish.
     *
     * @param part its name
     */
    record OfPart(String part) implements Handled {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.part(this);
        }

        @Override
        public String name() {
            return part;
        }
    }

    /**
     * A staple of the dish.
     *
     * @param share how much of it, above 0 and at most 1
     */
    record OfStaple(Staple staple, BigDecimal share) implements Handled {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.staple(this);
        }

        @Override
        public String name() {
            return staple.name();
        }
    }
}

package batchwright.food.hazard;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.text.ResourceTable;
import java.util.List;
import java.util.regex.Pattern;

/** What in the steps of a dish makes a food of it dangerous. */
sealed interface Sign {
    /** Whether the steps show it. */
    boolean isIn(Dish dish, Food food);

    /** Whether it is so of the food as it is sold. */
    boolean isWithoutDish();

    /** No step boils the food for so long. */
    record Unboiled(int minutes) implements Sign {
        @Override
        public boolean isIn(Dish dish, Food food) {
            return !new Method(dish, food).boils(minutes);
        }

        @Override
        public boolean isWithoutDish() {
            return true;
        }
    }

    /** No step heats the food. */
    record Unheated() implements Sign {
        @Override
        public boolean isIn(Dish dish, Food food) {
            return !new Method(dish, food).heats();
        }

        @Override
        public boolean isWithoutDish() {
            return true;
        }
    }

    /** A step says one of these. */
    record Says(List<String> words) implements Sign {
        public Says {
            words = List.copyOf(words);
        }

        @Override
        public boolean isIn(Dish dish, Food food) {
            return new Method(dish, food).says(words);
        }

        @Override
        public boolean isWithoutDish() {
            return false;
        }
    }

    /** Those of a cell, all of which must be there. */
    static List<Sign> all(String cell) {
        return Pattern.compile(";")
                .splitAsStream(cell)
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .map(Sign::one)
                .toList();
    }

    private static Sign one(String part) {
        String[] words = part.split(" ", 2);
        return switch (words[0]) {
            case "unboiled" -> new Unboiled(Integer.parseInt(words[1]));
            case "unheated" -> new Unheated();
            case "says" -> new Says(ResourceTable.words(words[1]));
            default -> throw new IllegalStateException("when (" + part + ") must be unboiled, unheated or says.");
        };
    }
}

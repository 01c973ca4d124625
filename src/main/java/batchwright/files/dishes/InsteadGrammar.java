package batchwright.files.dishes;

import batchwright.files.foods.FoodNames;
import batchwright.files.foods.Yields;
import batchwright.files.value.Problems;
import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Instead;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may take a food's place in a mix, at the end of its line: {@code , or sugar}, {@code , or leave out}, or several of these. */
final class InsteadGrammar {
    private static final String OR = ", or ";
    private static final String NOTHING = "leave out";

    private final FoodNames foods;
    private final Yields yields;
    private final Problems problems;

    InsteadGrammar(FoodNames foods, Yields yields, Problems problems) {
        this.foods = foods;
        this.yields = yields;
        this.problems = problems;
    }

    /**
     * A line of a mix.
     *
     * @param before the amount and perhaps a method
     * @param instead what stands behind each "or"
     */
    record Line(Written before, List<Written> instead) {}

    static Line split(Written written) {
        String[] pieces = written.text().split(OR, -1);
        List<Written> instead = new ArrayList<>();
        for (int p = 1; p < pieces.length; p++) {
            instead.add(new Written(pieces[p].strip(), written.at()));
        }
        return new Line(new Written(pieces[0], written.at()), instead);
    }

    /**
     * Whatever of it is right.
     *
     * @param method how the food is cooked, and so what takes its place
     */
    Instead read(Food food, BigDecimal grams, Optional<Written> method, List<Written> written) {
        List<Ingredient> others = new ArrayList<>();
        boolean nothing = false;
        for (Written one : written) {
            if (one.text().equals(NOTHING)) {
                nothing = true;
                continue;
            }
            Optional<Food> other = foods.find(one);
            if (other.filter(o -> o.equals(food) || isIn(o, others)).isPresent()) {
                problems.error(
                        one, one.quoted() + " stands in this line already", "expected another food, or leave out");
            } else {
                other.ifPresent(o -> others.add(new Ingredient(o, grams, cooked(o, method))));
            }
        }
        return new Instead(others, nothing);
    }

    private Optional<CookedYield> cooked(Food food, Optional<Written> method) {
        return method.flatMap(how -> yields.find(food, how));
    }

    private static boolean isIn(Food food, List<Ingredient> others) {
        return others.stream().anyMatch(other -> other.food().equals(food));
    }
}

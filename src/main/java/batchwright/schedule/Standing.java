package batchwright.schedule;

import batchwright.food.Dish;
import batchwright.food.Handled;
import batchwright.food.Step;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * How long cooked food may stand until it is in containers that go into the fridge: two hours, rice one (2 h: US and UK home advice as quoted;
 * rice: UK local authorities; neither read at the authority). Food above 63 C (UK; 57 C in the USA) does not count as standing.
 */
final class Standing {
    static final int MOST_MINUTES = 120;
    static final int MOST_MINUTES_OF_RICE = 60;
    private static final Pattern RICE = Pattern.compile("(^|.*_)rice(_(?!noodles|cakes?|vinegar|flour|paper).*|$)");

    private final Dish dish;
    private final Set<Integer> ofRice = new HashSet<>();

    Standing(Dish dish) {
        this.dish = dish;
        for (int number = 1; number <= dish.steps().size(); number++) {
            Step step = dish.steps().get(number - 1);
            if (handlesRice(step) || step.after().stream().anyMatch(ofRice::contains)) {
                ofRice.add(number);
            }
        }
    }

    /** Minutes at most after a step, by its number. */
    int most(int number) {
        return ofRice.contains(number) ? MOST_MINUTES_OF_RICE : MOST_MINUTES;
    }

    private boolean handlesRice(Step step) {
        boolean named = step.with().stream()
                .anyMatch(handled -> handled instanceof Handled.OfFood food
                        && isRice(food.food().id()));
        return named || (step.with().isEmpty() && step.parts().stream().anyMatch(this::isOfRice));
    }

    private boolean isOfRice(String part) {
        return dish.parts().stream()
                .filter(p -> p.name().equals(part))
                .flatMap(p -> p.mix().stream())
                .anyMatch(i -> isRice(i.food().id()));
    }

    static boolean isRice(String food) {
        return RICE.matcher(food).matches();
    }
}

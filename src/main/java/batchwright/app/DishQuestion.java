package batchwright.app;

import batchwright.plan.ContainerWish;
import java.util.List;
import java.util.Optional;

/**
 * Containers of one dish, as the user asks for them.
 *
 * @param dish id
 * @param with names of optional parts that must be in
 * @param without names of optional parts that must be left out
 * @param pantry whether what is at home may be used
 */
public record DishQuestion(
        String dish,
        int containers,
        ContainerWish wish,
        List<String> with,
        List<String> without,
        boolean pantry,
        Optional<TypedSum> budget) {
    public DishQuestion {
        with = List.copyOf(with);
        without = List.copyOf(without);
    }
}

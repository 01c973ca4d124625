package batchwright.app.newdish;

import java.util.List;

/**
 * A new dish as somebody typed it.
 *
 * @param containers that this batch fills
 * @param kind breakfast, lunch, dinner or main; empty for main
 * @param ingredients one a line, for the whole batch
 * @param steps one a line; none for plain ones
 * @param fridgeDays empty for those that are proposed
 * @param freezes yes or no; empty for what is proposed
 */
public record TypedDish(
        String name,
        String containers,
        String kind,
        List<String> ingredients,
        List<String> steps,
        String fridgeDays,
        String freezes) {
    public static final TypedDish NOTHING = new TypedDish("", "", "", List.of(), List.of(), "", "");

    public TypedDish {
        ingredients = List.copyOf(ingredients);
        steps = List.copyOf(steps);
    }

    TypedDish withName(String other) {
        return new TypedDish(other, containers, kind, ingredients, steps, fridgeDays, freezes);
    }

    TypedDish withContainers(String other) {
        return new TypedDish(name, other, kind, ingredients, steps, fridgeDays, freezes);
    }

    TypedDish withKind(String other) {
        return new TypedDish(name, containers, other, ingredients, steps, fridgeDays, freezes);
    }

    TypedDish withIngredients(List<String> other) {
        return new TypedDish(name, containers, kind, other, steps, fridgeDays, freezes);
    }

    TypedDish withSteps(List<String> other) {
        return new TypedDish(name, containers, kind, ingredients, other, fridgeDays, freezes);
    }

    TypedDish withFridgeDays(String other) {
        return new TypedDish(name, containers, kind, ingredients, steps, other, freezes);
    }

    TypedDish withFreezes(String other) {
        return new TypedDish(name, containers, kind, ingredients, steps, fridgeDays, other);
    }
}

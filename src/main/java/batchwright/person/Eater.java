package batchwright.person;

/**
 * A person with a body, a goal and likes: one profile file.
 *
 * @param id short name used in files and commands, such as lifter-gaining
 * @param name what people call this eater
 */
public record Eater(
        String id,
        String name,
        Body body,
        Activity activity,
        Goal goal,
        Health health,
        Adjustments adjustments,
        Wishes wishes) {
    public Eater withWishes(Wishes other) {
        return new Eater(id, name, body, activity, goal, health, adjustments, other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Eater that && id.equals(that.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }
}

package batchwright.person;

import java.util.Optional;

/**
 * A person with a body, a goal and likes: one profile file.
 *
 * @param id short name used in files and commands, such as lifter-gaining
 * @param name what people call this eater
 * @param experience of training with weights; empty when not said
 */
public record Eater(
        String id,
        String name,
        Body body,
        Activity activity,
        Goal goal,
        Health health,
        Adjustments adjustments,
        Wishes wishes,
        Optional<Experience> experience) {
    /** An eater whose experience is not said. */
    public Eater(
            String id,
            String name,
            Body body,
            Activity activity,
            Goal goal,
            Health health,
            Adjustments adjustments,
            Wishes wishes) {
        this(id, name, body, activity, goal, health, adjustments, wishes, Optional.empty());
    }

    public Eater withWishes(Wishes other) {
        return new Eater(id, name, body, activity, goal, health, adjustments, other, experience);
    }

    public Eater withBody(Body other) {
        return new Eater(id, name, other, activity, goal, health, adjustments, wishes, experience);
    }

    public Eater withHealth(Health other) {
        return new Eater(id, name, body, activity, goal, other, adjustments, wishes, experience);
    }

    public Eater withGoal(Goal other) {
        return new Eater(id, name, body, activity, other, health, adjustments, wishes, experience);
    }

    public Eater withExperience(Experience other) {
        return new Eater(id, name, body, activity, goal, health, adjustments, wishes, Optional.of(other));
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

package batchwright.person;

import java.util.Optional;

/**
 * A person with a body, a goal and likes: one profile file.
 *
 * @param id short name used in files and commands, such as lifter-gaining
 * @param name what people call this eater
 * @param training with weights
 */
public record Eater(
        String id,
        String name,
        Body body,
        PhysicalActivity activity,
        Goal goal,
        Health health,
        Adjustments adjustments,
        Wishes wishes,
        Training training) {
    /** An eater whose training is not said. */
    public Eater(
            String id,
            String name,
            Body body,
            PhysicalActivity activity,
            Goal goal,
            Health health,
            Adjustments adjustments,
            Wishes wishes) {
        this(id, name, body, activity, goal, health, adjustments, wishes, Training.NOT_SAID);
    }

    public Eater withWishes(Wishes other) {
        return new Eater(id, name, body, activity, goal, health, adjustments, other, training);
    }

    public Eater withBody(Body other) {
        return new Eater(id, name, other, activity, goal, health, adjustments, wishes, training);
    }

    public Eater withActivity(PhysicalActivity other) {
        return new Eater(id, name, body, other, goal, health, adjustments, wishes, training);
    }

    public Eater withGoal(Goal other) {
        return new Eater(id, name, body, activity, other, health, adjustments, wishes, training);
    }

    public Eater withAdjustments(Adjustments other) {
        return new Eater(id, name, body, activity, goal, health, other, wishes, training);
    }

    /** Of training with weights; empty when not said. */
    public Optional<Experience> experience() {
        return training.experience();
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

package batchwright.needs.weighing.kalman;

import java.util.Optional;

/**
 * One time of a course.
 *
 * @param before what is known before the reading
 * @param reading empty when nothing was seen, or it was left out
 * @param after what is known with it
 * @param next how the state moves on from here
 */
public record Moment(Belief before, Optional<Reading> reading, Belief after, Motion next) {
    public static Moment of(Belief before, Optional<Reading> reading, Motion next) {
        return new Moment(
                before, reading, reading.map(seen -> seen.update(before)).orElse(before), next);
    }

    public Optional<Surprise> surprise() {
        return reading.map(seen -> seen.surprise(before));
    }

    public Belief foreseen() {
        return next.of(after);
    }
}

package batchwright.needs.weighing.kalman;

import java.util.Optional;

/**
 * One time of a course.
 *
 * @param before what is known before the reading
 * @param reading empty when nothing was seen, or it was left out
 * @param next how the state moves on from here
 */
public record Moment(Belief before, Optional<Reading> reading, Motion next) {
    /** What is known with the reading. */
    public Belief after() {
        return reading.map(seen -> seen.update(before)).orElse(before);
    }

    public Optional<Surprise> surprise() {
        return reading.map(seen -> seen.surprise(before));
    }

    public Belief foreseen() {
        return next.of(after());
    }
}

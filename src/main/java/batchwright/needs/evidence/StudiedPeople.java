package batchwright.needs.evidence;

import batchwright.person.Body;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The people an equation was derived on; a body outside gets a caveat.
 *
 * @param limits inside all of these the equation was made for such bodies
 * @param notes what holds for every body, because the program cannot tell (athletes, say)
 */
public record StudiedPeople(List<Limit> limits, List<String> notes) {
    private static final StudiedPeople ANYONE = new StudiedPeople(List.of(), List.of());

    /** A measure of the body that has to be from least to most, both included. */
    public record Limit(String what, String unit, ToDoubleFunction<Body> measure, double least, double most) {
        Optional<String> caveat(Body body) {
            double value = measure.applyAsDouble(body);
            if (value >= least && value <= most) {
                return Optional.empty();
            }
            return Optional.of("made for " + what + " " + range() + unit + ", not " + Numerals.oneDecimal(value));
        }

        private String range() {
            if (Double.isInfinite(most)) {
                return "from " + Numerals.plain(least);
            }
            return least > 0 ? Numerals.plain(least) + " to " + Numerals.plain(most) : "up to " + Numerals.plain(most);
        }
    }

    public static StudiedPeople adults() {
        return ages(18, Double.POSITIVE_INFINITY);
    }

    public static StudiedPeople ages(double least, double most) {
        return ANYONE.and(new Limit("ages", " years", Body::ageYears, least, most));
    }

    public StudiedPeople bmi(double least, double most) {
        return and(new Limit("a BMI", "", Body::bmi, least, most));
    }

    public StudiedPeople weights(double least, double most) {
        return and(new Limit("weights", " kg", body -> body.weight().kg(), least, most));
    }

    public StudiedPeople note(String note) {
        return new StudiedPeople(limits, plus(notes, note));
    }

    /** Why the equation may not fit this body; empty when it was made for such bodies. */
    public List<String> caveats(Body body) {
        Stream<String> outside =
                limits.stream().map(limit -> limit.caveat(body)).flatMap(Optional::stream);
        return Stream.concat(outside, notes.stream()).toList();
    }

    private StudiedPeople and(Limit limit) {
        return new StudiedPeople(plus(limits, limit), notes);
    }

    private static <T> List<T> plus(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return List.copyOf(longer);
    }
}

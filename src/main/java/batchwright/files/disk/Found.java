package batchwright.files.disk;

import batchwright.text.Problem;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Result of looking for a user's file or folder. There are three answers, because what cannot be read must never be taken for
 * what is not there: a pantry behind a closed door is not an empty one.
 */
public sealed interface Found<T> {
    /** One of the three, whichever it is. */
    <R> R match(Supplier<R> absent, Function<T, R> there, Function<Problem, R> unreadable);

    /** What is there, made into something else. */
    default <R> Found<R> then(Function<T, Found<R>> next) {
        return match(Absent::new, next, Unreadable::new);
    }

    /** There is nothing of this name. */
    record Absent<T>() implements Found<T> {
        @Override
        public <R> R match(Supplier<R> absent, Function<T, R> there, Function<Problem, R> unreadable) {
            return absent.get();
        }
    }

    /** It is there, and this is in it. */
    record There<T>(T value) implements Found<T> {
        @Override
        public <R> R match(Supplier<R> absent, Function<T, R> there, Function<Problem, R> unreadable) {
            return there.apply(value);
        }
    }

    /**
     * Something is there, or may be, and cannot be read.
     *
     * @param problem an error that names the path
     */
    record Unreadable<T>(Problem problem) implements Found<T> {
        @Override
        public <R> R match(Supplier<R> absent, Function<T, R> there, Function<Problem, R> unreadable) {
            return unreadable.apply(problem);
        }
    }
}

package batchwright.files.disk;

import batchwright.text.Problem;
import java.util.List;
import java.util.Optional;

/**
 * The result of reading files: the value, unless there is an error, and every problem found.
 *
 * @param value empty when there is at least one error
 */
public record Read<T>(Optional<T> value, List<Problem> problems) {
    public Read {
        problems = List.copyOf(problems);
    }
}

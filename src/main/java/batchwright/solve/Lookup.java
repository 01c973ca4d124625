package batchwright.solve;

import java.util.Map;
import java.util.Objects;

/** Look-ups of what must be there. */
final class Lookup {
    private Lookup() {}

    static <K, V> V get(Map<K, V> map, K key) {
        return Objects.requireNonNull(map.get(key), () -> "no column for (" + key + ").");
    }
}

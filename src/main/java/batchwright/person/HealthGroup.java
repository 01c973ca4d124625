package batchwright.person;

import batchwright.text.ResourceTable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Questions of health that are asked together: one no answers them all. A row of health_groups.csv.
 *
 * @param key as written in a profile
 * @param onlySex the only sex that is asked
 * @param words what the group is about, short enough for a list
 */
public record HealthGroup(String key, Optional<Sex> onlySex, String words) {
    private static final int COLUMNS = 3;
    private static final List<HealthGroup> ALL =
            ResourceTable.divided(HealthGroup.class, "health_groups.csv", COLUMNS).stream()
                    .map(cells -> new HealthGroup(cells.get(0), sex(cells.get(1)), cells.get(2)))
                    .toList();

    /** In the order in which they are asked. */
    public static List<HealthGroup> all() {
        return ALL;
    }

    /** @throws IllegalArgumentException when there is none */
    public static HealthGroup of(String key) {
        return ALL.stream()
                .filter(group -> group.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("key (" + key + ") must be that of a group."));
    }

    /** Shorter still. */
    public String label() {
        return key.replace('_', ' ');
    }

    public boolean concerns(Sex sex) {
        return onlySex.map(sex::equals).orElse(true);
    }

    public List<HealthQuestion> questions() {
        return HealthQuestion.all().stream()
                .filter(question -> question.group().equals(this))
                .toList();
    }

    static Optional<Sex> sex(String who) {
        return who.equals("all") ? Optional.empty() : Optional.of(Sex.valueOf(who.toUpperCase(Locale.ROOT)));
    }
}

package batchwright.files;

import batchwright.person.Activity;
import batchwright.text.Written;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How active the eater is: a level by name, or the physical activity level (total energy / resting energy) as a number. The
 * levels are the examples of FAO/WHO/UNU, Human energy requirements (2004), Table 5.1.
 */
final class ActivityGrammar {
    private static final Map<String, Double> LEVELS = new LinkedHashMap<>();

    static {
        LEVELS.put("sedentary", 1.53);
        LEVELS.put("active", 1.76);
        LEVELS.put("vigorous", 2.25);
    }

    private static final Range PAL = Range.of("activity", "1.0", "2.5", "", "more is hard to keep up for long");

    private ActivityGrammar() {}

    static Optional<Activity> read(Written written, Problems problems) {
        Double level = LEVELS.get(written.text());
        if (level != null) {
            return Optional.of(new Activity(level, written.text()));
        }
        if (written.text().chars().anyMatch(Character::isDigit)) {
            return new Numbers(problems)
                    .decimal(written, PAL)
                    .map(pal -> new Activity(pal.doubleValue(), pal.toPlainString()));
        }
        problems.unknown(
                written,
                "there is no activity level called " + written.quoted(),
                "expected sedentary, active, vigorous, or a number from 1.0 to 2.5 such as 1.65",
                LEVELS.keySet());
        return Optional.empty();
    }
}

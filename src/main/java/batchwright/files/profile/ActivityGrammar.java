package batchwright.files.profile;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.CommonMultiplier;
import batchwright.person.FaoLevel;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import batchwright.text.Written;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How active the eater is, on one line: a level of FAO/WHO/UNU by name, the physical activity level (total energy / resting
 * energy) as a number, or a multiplier of common practice.
 */
final class ActivityGrammar {
    /** More is hard to keep up for long (FAO/WHO/UNU 2004: above 2.40, from memory), and no second opinion reaches further. */
    static final NumberRange PAL = NumberRange.of("activity", "1.0", "2.5", "", "more is hard to keep up for long");

    private static final Map<String, PhysicalActivity> NAMED = new LinkedHashMap<>();

    static {
        Stream.of(FaoLevel.values(), CommonMultiplier.values())
                .flatMap(Arrays::stream)
                .map(PhysicalActivity.class::cast)
                .forEach(activity -> NAMED.put(activity.label(), activity));
    }

    private ActivityGrammar() {}

    static Optional<PhysicalActivity> read(Written written, Problems problems) {
        PhysicalActivity named = NAMED.get(written.text());
        if (named != null) {
            return Optional.of(named);
        }
        if (written.text().chars().anyMatch(Character::isDigit)) {
            return new Numbers(problems).decimal(written, PAL).map(pal -> new PalNumber(pal.doubleValue()));
        }
        problems.unknown(
                written,
                "there is no activity level called " + written.quoted(),
                "expected facts, sedentary, active, vigorous, a number from 1.0 to 2.5 such as 1.65, a multiplier or a diary; the"
                        + " list of activities has them all",
                NAMED.keySet());
        return Optional.empty();
    }
}

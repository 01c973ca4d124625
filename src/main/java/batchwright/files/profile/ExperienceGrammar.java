package batchwright.files.profile;

import batchwright.files.value.Problems;
import batchwright.person.Experience;
import batchwright.text.Written;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How long the eater has trained with weights: {@code novice}, {@code intermediate} or {@code advanced}. */
final class ExperienceGrammar {
    private static final List<String> WORDS =
            Arrays.stream(Experience.values()).map(Experience::label).toList();

    private ExperienceGrammar() {}

    static Optional<Experience> read(Written written, Problems problems) {
        Optional<Experience> found = Arrays.stream(Experience.values())
                .filter(experience -> experience.label().equals(written.text()))
                .findFirst();
        if (found.isEmpty()) {
            problems.unknown(
                    written,
                    "there is no experience called " + written.quoted(),
                    "expected one of " + String.join(", ", WORDS),
                    WORDS);
        }
        return found;
    }
}

package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Which steps a step comes after: numbers of earlier ones, or the word nothing. Where it is not said, the step before. */
final class AfterGrammar {
    private static final String NOTHING = "nothing";
    private static final NumberRange NUMBER = NumberRange.of("step number", "1", "999", "", "");

    private final Problems problems;

    AfterGrammar(Problems problems) {
        this.problems = problems;
    }

    /** @param number of the step itself, the first being 1 */
    List<Integer> read(Fields fields, int number) {
        if (!fields.has("after")) {
            return number == 1 ? List.of() : List.of(number - 1);
        }
        List<Written> named = fields.oneOrMore("after", expected(number));
        if (named.size() == 1 && named.get(0).text().equals(NOTHING)) {
            return List.of();
        }
        return named.stream()
                .flatMap(w -> step(w, number).stream())
                .distinct()
                .sorted()
                .toList();
    }

    private Optional<Integer> step(Written written, int number) {
        if (written.text().chars().noneMatch(Character::isDigit)) {
            problems.unknown(
                    written, written.quoted() + " is not the number of a step", expected(number), List.of(NOTHING));
            return Optional.empty();
        }
        Optional<Integer> step = new Numbers(problems).whole(written, NUMBER);
        if (step.isPresent() && step.get() >= number) {
            problems.error(
                    written,
                    "this is step %s, and step %s does not come before it".formatted(number, step.get()),
                    expected(number));
            return Optional.empty();
        }
        return step;
    }

    private static String expected(int number) {
        String earlier = number == 1
                ? ""
                : IntStream.range(1, number)
                        .mapToObj(Integer::toString)
                        .reduce((all, one) -> all + ", " + one)
                        .map(all -> ": " + all)
                        .orElse("");
        return number == 1
                ? "expected nothing, or the line left out: it is the first step"
                : "expected the number of an earlier step" + earlier + "; a list such as [1, 2]; or nothing";
    }
}

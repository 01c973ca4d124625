package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.Problems;
import batchwright.food.Handled;
import batchwright.food.Step;
import batchwright.food.Way;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** One step of a dish's method. */
final class StepReader {
    private static final List<String> OWN_KEYS = List.of("do", "with", "after", "fills", "day_before", "part", "or");
    private static final List<String> KEYS =
            Stream.concat(OWN_KEYS.stream(), WayReader.KEYS.stream()).toList();
    private static final List<String> DAY_BEFORE = List.of("evening before", "night before", "day before");

    private final PartOfStepGrammar partOfStep;
    private final HandledGrammar handled;
    private final Problems problems;

    StepReader(PartOfStepGrammar partOfStep, HandledGrammar handled, Problems problems) {
        this.partOfStep = partOfStep;
        this.handled = handled;
        this.problems = problems;
    }

    /**
     * Empty when there is a problem in it.
     *
     * @param number of the step, the first being 1
     */
    Optional<Step> read(int number, Yaml.Group group) {
        int before = problems.errors();
        var fields = Fields.of(group, KEYS, problems);
        Optional<Written> text = fields.need("do", "Enter what to do: do: \"Boil the pasta.\"");
        boolean fills = fields.yesNo("fills").orElse(false);
        List<Way> ways = ways(fields, fills);
        List<Handled> with = fields.oneOrMore("with", "expected foods and staples of this dish: [onion, salt]").stream()
                .flatMap(w -> handled.read(w).stream())
                .toList();
        List<Integer> after = new AfterGrammar(problems).read(fields, number);
        boolean dayBefore = fields.yesNo("day_before").orElse(false);
        List<String> parts = partOfStep.read(fields);
        text.filter(t -> !dayBefore && !fields.has("day_before")).ifPresent(this::warnOfDayBefore);
        if (problems.errors() > before) {
            return Optional.empty();
        }
        return Optional.of(new Step(text.orElseThrow().text(), ways, with, after, fills, dayBefore, parts));
    }

    private List<Way> ways(Fields fields, boolean fills) {
        var reader = new WayReader(handled, problems);
        List<Way> ways = new ArrayList<>();
        reader.read(fields, fills).ifPresent(ways::add);
        if (fields.has("or")) {
            for (Yaml.Group other : fields.oneOrMoreGroups("or", "Enter another way below or: uses and its minutes")) {
                reader.read(Fields.of(other, WayReader.KEYS, problems), fills).ifPresent(ways::add);
            }
        }
        return ways;
    }

    private void warnOfDayBefore(Written text) {
        String small = text.text().toLowerCase(Locale.ROOT);
        if (DAY_BEFORE.stream().anyMatch(small::contains)) {
            problems.warning(
                    text.at(),
                    "this step belongs to the day before, and a plan does not say so",
                    "expected day_before: yes below it, or no when it is done on the cooking day");
        }
    }
}

package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.food.Step;
import batchwright.food.Step.Appliance;
import batchwright.text.Written;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** One step of a dish's method. */
final class StepReader {
    private static final List<String> KEYS =
            List.of("do", "minutes", "hands_on", "uses", "celsius", "shelves", "after", "fills", "day_before", "part");
    private static final List<String> APPLIANCES = List.of("burner", "oven");
    private static final List<String> DAY_BEFORE = List.of("evening before", "night before", "day before");
    private static final NumberRange MINUTES = NumberRange.of("time", "1", "1440", "minutes", "");
    private static final NumberRange SHELVES = NumberRange.of("number of shelves", "1", "4", "shelves", "");
    private static final NumberRange CELSIUS =
            NumberRange.of("oven temperature", "50", "300", "C", "degrees Celsius, not Fahrenheit");

    private final PartOfStepGrammar partOfStep;
    private final Problems problems;

    StepReader(PartOfStepGrammar partOfStep, Problems problems) {
        this.partOfStep = partOfStep;
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
        Optional<Integer> minutes = fields.need("minutes", "Enter how long it takes: minutes: 12")
                .flatMap(w -> new Numbers(problems).whole(w, MINUTES));
        Optional<Integer> handsOn = fields.need(
                        "hands_on",
                        "Enter yes when it takes the cook's hands all the time, no when not at all, else the minutes at"
                                + " its start that do")
                .flatMap(w -> handsOn(w, minutes));
        Optional<Appliance> uses = fields.text("uses").flatMap(this::appliance);
        OptionalInt celsius = celsius(fields, uses);
        Optional<Integer> shelves = shelves(fields, uses);
        List<Integer> after = new AfterGrammar(problems).read(fields, number);
        boolean fills = fields.yesNo("fills").orElse(false);
        boolean dayBefore = fields.yesNo("day_before").orElse(false);
        List<String> parts = partOfStep.read(fields);
        text.filter(t -> !dayBefore && !fields.has("day_before")).ifPresent(this::warnOfDayBefore);
        if (problems.errors() > before) {
            return Optional.empty();
        }
        return Optional.of(new Step(
                text.orElseThrow().text(),
                minutes.orElseThrow(),
                handsOn.orElseThrow(),
                uses,
                celsius,
                shelves.orElse(1),
                after,
                fills,
                dayBefore,
                parts));
    }

    /** The word yes or no, or a number of minutes; none when the step's own minutes are not known. */
    private Optional<Integer> handsOn(Written written, Optional<Integer> minutes) {
        String word = written.text().toLowerCase(Locale.ROOT);
        if (word.equals("yes") || word.equals("no")) {
            return word.equals("no") ? Optional.of(0) : minutes;
        }
        if (word.chars().noneMatch(Character::isDigit)) {
            problems.error(
                    written,
                    written.quoted() + " is neither yes nor no nor a number",
                    "expected yes, no, or the minutes at the start that take the cook's hands");
            return Optional.empty();
        }
        Optional<Integer> hands = new Numbers(problems).whole(written, MINUTES);
        if (hands.isPresent() && minutes.isPresent() && hands.get() > minutes.get()) {
            problems.error(
                    written,
                    "%s minutes hands on are more than the step takes, %s".formatted(hands.get(), minutes.get()),
                    "expected at most " + minutes.get() + ", or a longer step");
            return Optional.empty();
        }
        return hands;
    }

    private Optional<Integer> shelves(Fields fields, Optional<Appliance> uses) {
        Optional<Written> written = fields.text("shelves");
        boolean oven = uses.equals(Optional.of(Appliance.OVEN));
        if (written.isPresent() && !oven && (uses.isPresent() || !fields.has("uses"))) {
            problems.error(written.get(), "shelves without an oven", "expected uses: oven above it");
        }
        return written.flatMap(w -> new Numbers(problems).whole(w, SHELVES));
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

    private OptionalInt celsius(Fields fields, Optional<Appliance> uses) {
        boolean oven = uses.equals(Optional.of(Appliance.OVEN));
        Optional<Written> written =
                oven ? fields.need("celsius", "Enter the oven temperature: celsius: 200") : fields.text("celsius");
        if (!oven && written.isPresent() && (uses.isPresent() || !fields.has("uses"))) {
            problems.error(written.get(), "a temperature without an oven", "expected uses: oven above it");
        }
        return written.flatMap(w -> new Numbers(problems).whole(w, CELSIUS))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private Optional<Appliance> appliance(Written written) {
        if (APPLIANCES.contains(written.text())) {
            return Optional.of(Appliance.valueOf(written.text().toUpperCase(Locale.ROOT)));
        }
        problems.unknown(
                written,
                "there is no appliance called " + written.quoted(),
                "expected burner or oven, or the line left out",
                APPLIANCES);
        return Optional.empty();
    }
}

package batchwright.files;

import batchwright.food.Step;
import batchwright.food.Step.Appliance;
import batchwright.text.Written;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** One step of a dish's method. */
final class StepReader {
    private static final List<String> KEYS = List.of("do", "minutes", "hands_on", "uses", "celsius", "day_before");
    private static final List<String> APPLIANCES = List.of("burner", "oven");
    private static final List<String> DAY_BEFORE = List.of("evening before", "night before", "day before");
    private static final Range MINUTES = Range.of("time", "1", "1440", "minutes", "");
    private static final Range CELSIUS =
            Range.of("oven temperature", "50", "300", "C", "degrees Celsius, not Fahrenheit");

    private final Problems problems;

    StepReader(Problems problems) {
        this.problems = problems;
    }

    /** Empty when there is a problem in it. */
    Optional<Step> read(Yaml.Group group) {
        int before = problems.errors();
        var fields = Fields.of(group, KEYS, problems);
        Optional<Written> text = fields.need("do", "Enter what to do: do: \"Boil the pasta.\"");
        Optional<Integer> minutes = fields.need("minutes", "Enter how long it takes: minutes: 12")
                .flatMap(w -> new Numbers(problems).whole(w, MINUTES));
        Optional<Boolean> handsOn = fields.need(
                        "hands_on", "Enter yes when it takes the cook's hands all the time, else no")
                .flatMap(w -> YesNo.read(w, problems));
        Optional<Appliance> uses = fields.text("uses").flatMap(this::appliance);
        OptionalInt celsius = celsius(fields, uses);
        boolean dayBefore = fields.yesNo("day_before").orElse(false);
        text.filter(t -> !dayBefore && !fields.has("day_before")).ifPresent(this::warnOfDayBefore);
        if (problems.errors() > before) {
            return Optional.empty();
        }
        return Optional.of(new Step(
                text.orElseThrow().text(), minutes.orElseThrow(), handsOn.orElseThrow(), uses, celsius, dayBefore));
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

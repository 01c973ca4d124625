package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.food.Appliance;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.text.Written;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** A way to do a step: on what, and how long by which law; or, as in older dishes, minutes for five containers. */
final class WayReader {
    private static final List<String> OWN_KEYS = List.of("minutes", "hands_on", "uses", "celsius", "shelves");
    static final List<String> KEYS =
            Stream.concat(OWN_KEYS.stream(), LawsReader.KEYS.stream()).toList();
    private static final List<String> APPLIANCES =
            Arrays.stream(Appliance.values()).map(Appliance::id).toList();
    private static final NumberRange MINUTES = NumberRange.of("time", "1", "1440", "minutes", "");
    private static final NumberRange SHELVES = NumberRange.of("number of shelves", "1", "4", "shelves", "");
    private static final NumberRange CELSIUS =
            NumberRange.of("oven temperature", "50", "300", "C", "degrees Celsius, not Fahrenheit");

    private final LawsReader laws;
    private final Problems problems;

    WayReader(HandledGrammar handled, Problems problems) {
        this.laws = new LawsReader(handled, problems);
        this.problems = problems;
    }

    /**
     * Empty when there is a problem in it.
     *
     * @param fills whether it fills the containers, which needs no other minutes where it follows laws
     */
    Optional<Way> read(Fields fields, boolean fills) {
        int before = problems.errors();
        boolean lawful = LawsReader.areIn(fields) || (fills && !fields.has("minutes") && !fields.has("hands_on"));
        if (lawful && (fields.has("minutes") || fields.has("hands_on"))) {
            problems.error(
                    fields.place(fields.has("minutes") ? "minutes" : "hands_on"),
                    "minutes for five containers beside a law",
                    "expected minutes and hands_on, or hand_work, loads, power and by_itself, not both");
        }
        List<TimeLaw> ofTime =
                lawful ? laws.laws(fields) : forFive(fields).stream().toList();
        Optional<Appliance> uses = fields.text("uses").flatMap(this::appliance);
        OptionalInt celsius = celsius(fields, uses);
        Optional<Integer> shelves = shelves(fields, uses);
        Optional<Way.Volume> pot = laws.pot(fields);
        return problems.errors() > before
                ? Optional.empty()
                : Optional.of(new Way(uses, celsius, shelves.orElse(1), ofTime, pot));
    }

    private Optional<TimeLaw> forFive(Fields fields) {
        Optional<Integer> minutes = fields.need("minutes", "Enter how long it takes: minutes: 12")
                .flatMap(w -> new Numbers(problems).whole(w, MINUTES));
        Optional<Integer> handsOn = fields.need(
                        "hands_on",
                        "Enter yes when it takes the cook's hands all the time, no when not at all, else the minutes at"
                                + " its start that do")
                .flatMap(w -> handsOn(w, minutes));
        return minutes.isPresent() && handsOn.isPresent()
                ? Optional.of(new TimeLaw.ForFive(minutes.get(), handsOn.get()))
                : Optional.empty();
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
                "expected one of " + String.join(", ", APPLIANCES) + "; or the line left out",
                APPLIANCES);
        return Optional.empty();
    }
}

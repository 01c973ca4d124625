package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.value.Measured;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.person.Sex;
import batchwright.person.Tape;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The body of an eater: sex, age, weight, height and perhaps body fat and girths. */
final class BodyReader {
    private static final List<String> SEXES = List.of("female", "male");
    private static final String EQUATIONS = "the published equations say nothing about other bodies";
    private static final String ESTIMATE = "estimate";
    private static final List<String> METHODS = Arrays.stream(FatMethod.values())
            .filter(method -> method != FatMethod.NOT_SAID)
            .map(FatMethod::label)
            .toList();
    private static final NumberRange AGE = NumberRange.of("age", "1", "120", "years", "");
    private static final NumberRange KG = NumberRange.of("weight", "25", "300", "kg", EQUATIONS);
    private static final NumberRange LB = NumberRange.of("weight", "55.2", "661.3", "lb", EQUATIONS);
    private static final NumberRange CM = NumberRange.of("height", "100", "250", "cm", EQUATIONS);
    private static final NumberRange METRES = NumberRange.of("height", "1", "2.5", "m", EQUATIONS);
    private static final NumberRange FEET = NumberRange.of("height", "3", "8", "ft", EQUATIONS);
    private static final NumberRange INCHES = NumberRange.of("inches", "0", "11.99", "in", "12 inches are a foot");
    private static final NumberRange FAT = NumberRange.of(
            "body_fat", "2", "70", "%", "write estimate, or leave the line out, when it was not measured");
    private static final Pattern FEET_AND_INCHES = Pattern.compile("(\\S+)\\s*ft(?:\\s+(\\S+)\\s*in)?");
    private static final String HEIGHT = "a height such as 181 cm, 1.81 m or 5 ft 11 in";

    private final Problems problems;
    private final Numbers numbers;

    BodyReader(Problems problems) {
        this.problems = problems;
        this.numbers = new Numbers(problems);
    }

    /** Empty when there is a problem in this eater. */
    Optional<Body> read(Fields fields) {
        Optional<Sex> sex = fields.need("sex", "Enter female or male, as the published equations use it")
                .flatMap(this::sex);
        Optional<BigDecimal> age =
                fields.need("age", "Enter your age in years: age: 27").flatMap(w -> numbers.decimal(w, AGE));
        Optional<Mass> weight = fields.need("weight", "Enter your weight with its unit: weight: 74 kg")
                .flatMap(this::weight);
        Optional<Length> height = fields.need("height", "Enter your height with its unit: height: 181 cm")
                .flatMap(this::height);
        Optional<BodyFat> fat = fat(fields);
        Optional<Tape> tape = fields.group("tape").flatMap(group -> new TapeReader(problems).read(group, sex));
        if (problems.errors() > 0) {
            return Optional.empty();
        }
        return Optional.of(new Body(
                sex.orElseThrow(),
                age.orElseThrow().doubleValue(),
                weight.orElseThrow(),
                height.orElseThrow(),
                fat,
                tape));
    }

    private Optional<Sex> sex(Written written) {
        if (SEXES.contains(written.text())) {
            return Optional.of(Sex.valueOf(written.text().toUpperCase(Locale.ROOT)));
        }
        problems.unknown(
                written,
                written.quoted() + " is neither female nor male",
                "expected female or male, as the published equations use it",
                SEXES);
        return Optional.empty();
    }

    private Optional<BodyFat> fat(Fields fields) {
        Optional<Written> said = fields.text("body_fat");
        Optional<Written> method = fields.text("body_fat_method");
        boolean figure =
                said.filter(written -> !written.text().equals(ESTIMATE)).isPresent();
        if (method.isPresent() && !figure) {
            problems.error(
                    method.get(),
                    "no figure of body fat goes with this method",
                    "expected body_fat with a share such as 15 %, or no body_fat_method");
        }
        return said.flatMap(written -> figure ? figure(written, method) : Optional.of(BodyFat.ASKED_FOR));
    }

    private Optional<BodyFat> figure(Written written, Optional<Written> method) {
        FatMethod by = method.flatMap(this::method).orElse(FatMethod.NOT_SAID);
        return Measured.in(written, FAT, "a share such as 15 %, or the word estimate", problems)
                .map(percent -> new BodyFat.Measured(Share.ofPercent(percent.doubleValue()), by));
    }

    private Optional<FatMethod> method(Written written) {
        Optional<FatMethod> method = FatMethod.of(written.text());
        if (method.isEmpty()) {
            problems.unknown(
                    written,
                    "there is no way of measuring body fat called " + written.quoted(),
                    "expected one of " + String.join(", ", METHODS),
                    METHODS);
        }
        return method;
    }

    Optional<Mass> weight(Written written) {
        return Measured.read(written, List.of("kg", "lb"), "a weight such as 74 kg or 163 lb", problems)
                .flatMap(m -> m.unit().equals("kg")
                        ? numbers.decimal(m.number(), KG).map(kg -> new Mass(kg.doubleValue()))
                        : numbers.decimal(m.number(), LB).map(lb -> Mass.ofPounds(lb.doubleValue())));
    }

    Optional<Length> height(Written written) {
        Matcher feet = FEET_AND_INCHES.matcher(written.text());
        if (feet.matches()) {
            return feetAndInches(written, feet);
        }
        return Measured.read(written, List.of("cm", "m"), HEIGHT, problems)
                .flatMap(m -> m.unit().equals("cm")
                        ? numbers.decimal(m.number(), CM).map(cm -> new Length(cm.doubleValue()))
                        : numbers.decimal(m.number(), METRES).map(metres -> new Length(metres.doubleValue() * 100)));
    }

    private Optional<Length> feetAndInches(Written written, Matcher match) {
        Optional<Integer> feet = numbers.whole(new Written(match.group(1), written.at()), FEET);
        String inches = match.group(2) == null ? "0" : match.group(2);
        Optional<BigDecimal> rest = numbers.decimal(new Written(inches, written.at()), INCHES);
        return feet.flatMap(ft -> rest.map(in -> Length.ofFeetAndInches(ft, in.doubleValue())));
    }
}

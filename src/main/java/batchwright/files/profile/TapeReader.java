package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.Measured;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Sex;
import batchwright.person.Tape;
import batchwright.quantity.Length;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The group {@code tape} of an eater: girths of neck and waist, and of women the hips. */
final class TapeReader {
    private static final List<String> KEYS = List.of("neck", "waist", "hips");
    private static final Map<String, BigDecimal> CM =
            Map.of("cm", BigDecimal.ONE, "m", BigDecimal.valueOf(100), "in", BigDecimal.valueOf(Length.CM_PER_INCH));
    private static final String SLIP = "look for another unit or a point in the wrong place";

    private final Problems problems;

    TapeReader(Problems problems) {
        this.problems = problems;
    }

    /** Empty when there is a problem in it. */
    Optional<Tape> read(Yaml.Group group, Optional<Sex> sex) {
        var fields = Fields.of(group, KEYS, problems);
        Optional<Length> neck = fields.need("neck", "Enter the girth of the neck below the larynx: neck: 38 cm")
                .flatMap(w -> length(w, "neck", 20, 70));
        String where = sex.filter(s -> s == Sex.FEMALE).isPresent() ? "where it is narrowest" : "at the navel";
        Optional<Length> waist = fields.need("waist", "Enter the girth of the waist " + where + ": waist: 84 cm")
                .flatMap(w -> length(w, "waist", 40, 250));
        Optional<Length> hips = hips(fields, sex);
        if (neck.isPresent()
                && waist.isPresent()
                && neck.get().cm() >= waist.get().cm()) {
            problems.error(
                    fields.place("neck"),
                    "the neck is not less than the waist",
                    "expected a waist larger than the neck: look for lines that changed places, or for another unit");
            return Optional.empty();
        }
        return neck.flatMap(n -> waist.map(w -> new Tape(n, w, hips)));
    }

    private Optional<Length> hips(Fields fields, Optional<Sex> sex) {
        if (sex.filter(s -> s == Sex.FEMALE).isPresent()) {
            return fields.need("hips", "Enter the girth of the hips where they are widest: hips: 98 cm")
                    .flatMap(w -> length(w, "hips", 50, 250));
        }
        if (fields.has("hips") && sex.isPresent()) {
            problems.warning(fields.place("hips"), "the hips are not used for men", "expected neck and waist only");
        }
        return Optional.empty();
    }

    private Optional<Length> length(Written written, String what, int leastCm, int mostCm) {
        return Measured.read(written, List.of("cm", "in", "m"), "a girth such as 84 cm or 33 in", problems)
                .flatMap(measured -> {
                    BigDecimal cm = CM.getOrDefault(measured.unit(), BigDecimal.ONE);
                    NumberRange range = new NumberRange(what, in(leastCm, cm), in(mostCm, cm), measured.unit(), SLIP);
                    return new Numbers(problems)
                            .decimal(measured.number(), range)
                            .map(number -> new Length(number.multiply(cm).doubleValue()));
                });
    }

    private static BigDecimal in(int cm, BigDecimal cmPerUnit) {
        return BigDecimal.valueOf(cm).divide(cmPerUnit, 1, RoundingMode.HALF_UP).stripTrailingZeros();
    }
}

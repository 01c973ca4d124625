package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.Measured;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.FatPouredOff;
import batchwright.food.Ingredient;
import batchwright.food.Part;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** One part of a dish. */
final class PartReader {
    private static final List<String> KEYS =
            List.of("part", "optional", "piece", "least", "most", "mix", "fat_poured_off", "removes");
    private static final NumberRange FAT =
            NumberRange.of("fat poured off", "0.1", "1000", "g", "it belongs to the amounts of the mix as written");

    private final MixReader mixes;
    private final AmountGrammar amounts;
    private final Problems problems;
    private final Once once;

    PartReader(MixReader mixes, AmountGrammar amounts, Problems problems) {
        this.mixes = mixes;
        this.amounts = amounts;
        this.problems = problems;
        this.once = new Once(problems);
    }

    /** Empty when there is a problem in it. */
    Optional<Part> read(Yaml.Group group) {
        int before = problems.errors();
        var fields = Fields.of(group, KEYS, problems);
        Optional<Written> name = fields.need("part", "Enter the name of this part: part: sauce");
        name.ifPresent(n -> once.isNew(n.text(), n));
        boolean optional = fields.yesNo("optional").orElse(false);
        List<Ingredient> mix = mix(fields);
        Optional<PortionGrammar> portions = fields.has("piece")
                ? fields.text("piece").flatMap(piece -> inPieces(piece, mix))
                : Optional.of(PortionGrammar.onTheScale(problems));
        Optional<Written> least = fields.need("least", "Enter the least of it in a container: least: 60 g");
        Optional<Written> most = fields.need("most", "Enter the most of it in a container: most: 120 g");
        Optional<Integer> leastGrams = portions.flatMap(p -> least.flatMap(p::read));
        Optional<Integer> mostGrams = portions.flatMap(p -> most.flatMap(p::read));
        if (leastGrams.isPresent() && mostGrams.isPresent() && leastGrams.get() > mostGrams.get()) {
            upsideDown(least.orElseThrow(), most.orElseThrow());
        }
        FatPouredOff fat = fields.text("fat_poured_off")
                .flatMap(written -> fatPouredOff(written, mix))
                .orElse(FatPouredOff.NONE);
        if (!mix.isEmpty()) {
            fields.group("removes").ifPresent(new RemovesReader(mix, problems)::read);
        }
        fields.group("mix")
                .ifPresent(lines -> InsteadChecks.ofPart(mix, fields.has("piece"), fields.has("fat_poured_off"))
                        .forEach(wrong -> problems.error(lines.at(), wrong.what(), wrong.expected())));
        if (problems.errors() > before || mix.isEmpty()) {
            return Optional.empty();
        }
        var portion = portions.orElseThrow();
        return Optional.of(new Part(
                name.orElseThrow().text(),
                optional,
                portion.stepGrams(),
                portion.pieces(),
                leastGrams.orElseThrow(),
                mostGrams.orElseThrow(),
                mix,
                fat));
    }

    private void upsideDown(Written least, Written most) {
        problems.error(
                least,
                "least %s is more than most %s".formatted(least.text(), most.text()),
                "expected the smaller of the two as least");
    }

    private Optional<FatPouredOff> fatPouredOff(Written written, List<Ingredient> mix) {
        Optional<BigDecimal> grams = Measured.in(written, FAT, "grams of fat, such as 8 g", problems);
        BigDecimal fat = FatPouredOff.fatIn(mix);
        BigDecimal most = fat.multiply(FatPouredOff.MOST_SHARE).setScale(1, RoundingMode.DOWN);
        if (grams.isPresent() && !mix.isEmpty() && grams.get().compareTo(most) > 0) {
            problems.error(
                    written,
                    "%s is more than four fifths of the %s g of fat in this mix"
                            .formatted(written.text(), fat.setScale(1, RoundingMode.HALF_UP)),
                    most.signum() == 0
                            ? "expected no such line"
                            : "expected at most %s g: some fat stays in the food".formatted(most));
            return Optional.empty();
        }
        return grams.map(FatPouredOff::new);
    }

    /** A piece of a single food may be one of its measures: piece: 1 large. */
    private Optional<PortionGrammar> inPieces(Written piece, List<Ingredient> mix) {
        if (mix.isEmpty() && !PortionGrammar.isWeight(piece)) {
            return Optional.empty(); // what is wrong with the mix was told
        }
        return mix.size() == 1
                ? PortionGrammar.inPieces(piece, mix.get(0).food(), amounts, problems)
                : PortionGrammar.inPieces(piece, problems);
    }

    /** Empty when there is a problem in it, so that nothing is said of a mix that is not known as a whole. */
    private List<Ingredient> mix(Fields fields) {
        int before = problems.errors();
        List<Ingredient> mix = fields.needGroup("mix", "Enter the foods of this part below mix: one a line")
                .map(mixes::read)
                .orElse(List.of());
        return problems.errors() > before ? List.of() : mix;
    }
}

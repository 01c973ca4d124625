package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.Handled;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The laws by which a step's minutes grow with the batch, and what its pot has to hold. */
final class LawsReader {
    static final List<String> KEYS = List.of("hand_work", "loads", "power", "by_itself", "pot");
    private static final List<String> LAWS = List.of("hand_work", "loads", "power", "by_itself");
    private static final String START = "start";
    private static final NumberRange MINUTES = NumberRange.of("time", "0", "1440", "minutes", "");
    private static final NumberRange WHOLE_MINUTES = NumberRange.of("time", "1", "1440", "minutes", "");
    private static final NumberRange PER_KG = NumberRange.of("time", "0.1", "200", "minutes per kg", "");
    private static final NumberRange GRAMS = NumberRange.of("one load", "20", "10000", "g", "");
    private static final NumberRange LITRES =
            NumberRange.of("volume", "0.3", "15", "litres per kg", "the water counted");

    private final HandledGrammar handled;
    private final Problems problems;

    LawsReader(HandledGrammar handled, Problems problems) {
        this.handled = handled;
        this.problems = problems;
    }

    static boolean areIn(Fields fields) {
        return LAWS.stream().anyMatch(fields::has);
    }

    /** In the order in which they are done: hands first. */
    List<TimeLaw> laws(Fields fields) {
        List<TimeLaw> laws = new ArrayList<>();
        fields.group("hand_work")
                .map(group -> growing(group, "hand_work: {start: 2, onion: 8}"))
                .ifPresent(g -> laws.add(new TimeLaw.HandWork(g.start, g.perKg)));
        fields.group("loads").flatMap(this::loads).ifPresent(laws::add);
        fields.group("power")
                .map(group -> growing(group, "power: {start: 5, onion: 16}"))
                .ifPresent(g -> laws.add(new TimeLaw.Power(g.start, g.perKg)));
        fields.whole("by_itself", WHOLE_MINUTES).ifPresent(m -> laws.add(new TimeLaw.ByItself(m)));
        return laws;
    }

    Optional<Way.Volume> pot(Fields fields) {
        return fields.group("pot").flatMap(group -> {
            var own = Fields.of(group, List.of("litres_per_kg", "of"), problems);
            Optional<Double> litres = own.need(
                            "litres_per_kg", "Enter litres for each kg, water counted: litres_per_kg: 3")
                    .flatMap(w -> number(w, LITRES));
            List<Handled> of = of(own);
            return litres.filter(l -> !of.isEmpty()).map(l -> new Way.Volume(l, of));
        });
    }

    private record Growing(double start, Map<Handled, Double> perKg) {}

    /** Minutes at the start, and for each kilogram of what is named. */
    private Growing growing(Yaml.Group group, String example) {
        var once = new Once(problems);
        double start = 0;
        Map<Handled, Double> perKg = new LinkedHashMap<>();
        for (Yaml.Entry entry : group.entries()) {
            if (!once.isNew(entry.key().text(), entry.key())) {
                continue;
            }
            if (!(entry.value() instanceof Yaml.Text text)) {
                problems.error(entry.value().at(), "this is not a number of minutes", "expected " + example);
            } else if (entry.key().text().equals(START)) {
                start = number(text.written(), MINUTES).orElse(0.0);
            } else {
                Optional<Handled> what = handled.read(entry.key());
                number(text.written(), PER_KG).ifPresent(m -> what.ifPresent(w -> perKg.put(w, m)));
            }
        }
        if (group.entries().isEmpty()) {
            problems.error(group.at(), "there are no minutes here", "expected " + example);
        }
        return new Growing(start, perKg);
    }

    private Optional<TimeLaw> loads(Yaml.Group group) {
        var own = Fields.of(group, List.of(START, "minutes", "grams", "of"), problems);
        double start = own.text(START).flatMap(w -> number(w, MINUTES)).orElse(0.0);
        Optional<Double> each =
                own.need("minutes", "Enter the minutes of one load: minutes: 8").flatMap(w -> number(w, MINUTES));
        Optional<Integer> grams = own.need("grams", "Enter the grams of one load: grams: 400")
                .flatMap(w -> new Numbers(problems).whole(w, GRAMS));
        List<Handled> of = of(own);
        return each.isPresent() && grams.isPresent() && !of.isEmpty()
                ? Optional.of(new TimeLaw.Loads(start, each.get(), grams.get(), of))
                : Optional.empty();
    }

    private List<Handled> of(Fields own) {
        String ask = "Enter the foods or the part that it is about: of: onion";
        own.needed("of", ask);
        return own.oneOrMore("of", ask).stream()
                .flatMap(w -> handled.read(w).stream())
                .toList();
    }

    private Optional<Double> number(Written written, NumberRange range) {
        return new Numbers(problems).decimal(written, range).map(Number::doubleValue);
    }
}

package batchwright.app.newdish;

import batchwright.app.newdish.BatchLine.Mixed;
import batchwright.app.newdish.BatchLine.Seasoning;
import batchwright.app.newdish.BatchLine.Wrong;
import batchwright.files.value.FractionSigns;
import batchwright.files.value.Weights;
import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.MeasureName;
import batchwright.text.Words;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * {@code 500 g brown rice}, {@code 2 tbsp olive oil}, {@code 3 onions}, {@code 1 1/2 lb chicken breast, roasted, in meat}, {@code salt}:
 * an amount, a food in a cook's words, and perhaps how it is cooked and the part it belongs to.
 */
final class BatchLineGrammar {
    private static final Pattern NUMBER =
            Pattern.compile("((?:\\d+\\s+)?\\d+/\\d+|\\d+(?:[.,]\\d+)?)\\s*(?:x\\s+)?(.*)");
    private static final Pattern IN_PART = Pattern.compile("in ([a-z][a-z0-9 ]{0,29})");
    private static final Set<String> RAW = Set.of("raw", "as it is");
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("gram", "g"),
            Map.entry("grams", "g"),
            Map.entry("gr", "g"),
            Map.entry("kilo", "kg"),
            Map.entry("kilos", "kg"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"),
            Map.entry("ounce", "oz"),
            Map.entry("ounces", "oz"),
            Map.entry("tablespoon", "tbsp"),
            Map.entry("tablespoons", "tbsp"),
            Map.entry("tbs", "tbsp"),
            Map.entry("teaspoon", "tsp"),
            Map.entry("teaspoons", "tsp"),
            Map.entry("tin", "can"),
            Map.entry("tins", "can"));
    /** A bare number of a food counts in the first of these that it has. */
    private static final List<String> COUNTED_IN =
            List.of("medium", "large", "piece", "can", "fillet", "breast", "slice");

    private static final Map<String, Integer> MILLILITRES = Map.of(
            "ml", 1, "cl", 10, "dl", 100, "l", 1000, "litre", 1000, "litres", 1000, "liter", 1000, "liters", 1000);
    /** By which the measures of foods are weighed: a US cup (NIST Handbook 44, appendix C). */
    private static final BigDecimal MILLILITRES_PER_CUP = new BigDecimal("236.588");

    private static final Set<String> CANS = Set.of("can", "cans");
    private static final BigDecimal MOST_GRAMS = BigDecimal.valueOf(50_000);
    private static final int MEASURE_WORDS = 3;

    private final Kitchen kitchen;
    private final FoodsMeant foods;

    BatchLineGrammar(Kitchen kitchen, FoodsMeant foods) {
        this.kitchen = kitchen;
        this.foods = foods;
    }

    BatchLine read(String typed) {
        List<String> pieces = Arrays.stream(FractionSigns.spelledOut(typed).split(",(?!\\d)"))
                .map(piece -> piece.strip().replaceAll("\\s+", " "))
                .filter(piece -> !piece.isEmpty())
                .toList();
        if (pieces.isEmpty()) {
            return new Wrong("Enter an amount and a food, such as 500 g brown rice.");
        }
        Matcher form = NUMBER.matcher(pieces.get(0));
        List<String> notes = pieces.subList(1, pieces.size());
        return form.matches() ? amount(number(form.group(1)), form.group(2), notes) : toTaste(pieces.get(0));
    }

    private static BigDecimal number(String written) {
        String[] words = written.replace(',', '.').split("\\s+", -1);
        BigDecimal sum = BigDecimal.ZERO;
        for (String word : words) {
            String[] parts = word.split("/", -1);
            BigDecimal below = parts.length == 2 ? new BigDecimal(parts[1]) : BigDecimal.ONE;
            sum = sum.add(
                    below.signum() == 0
                            ? BigDecimal.ZERO
                            : new BigDecimal(parts[0]).divide(below, MathContext.DECIMAL64));
        }
        return sum;
    }

    private BatchLine toTaste(String words) {
        return foods.seasoning(words)
                .<BatchLine>map(name -> new Seasoning(name, Optional.empty()))
                .orElse(new Wrong("There is no amount. Enter one for the whole batch, such as 500 g " + words
                        + ", or 2 tbsp, or 3; only what is a spice goes without."));
    }

    private BatchLine amount(BigDecimal number, String rest, List<String> notes) {
        if (number.signum() <= 0) {
            return new Wrong("Enter an amount above 0.");
        }
        List<String> words = Arrays.stream(rest.split(" "))
                .filter(word -> !word.isEmpty())
                .map(word -> UNITS.getOrDefault(word.toLowerCase(Locale.ROOT), word))
                .toList();
        if (words.isEmpty()) {
            return new Wrong("Enter a food behind the amount, such as 500 g brown rice.");
        }
        String unit = words.get(0).toLowerCase(Locale.ROOT);
        if (Weights.isUnit(unit)) {
            return weighed(Weights.inGrams(number, unit), food(words, 1), notes);
        }
        return measured(number, words, notes);
    }

    private static String food(List<String> words, int from) {
        int start = from < words.size() && words.get(from).equals("of") ? from + 1 : from;
        return String.join(" ", words.subList(Math.min(start, words.size()), words.size()));
    }

    private BatchLine weighed(BigDecimal grams, String words, List<String> notes) {
        if (words.isEmpty()) {
            return new Wrong("Enter a food behind the amount, such as 500 g brown rice.");
        }
        Optional<String> seasoning = foods.seasoning(words);
        if (seasoning.isPresent()) {
            return new Seasoning(seasoning.get(), Optional.of(grams));
        }
        FoodsMeant.Meant meant = foods.meant(words);
        return meant.food().map(food -> mixed(food, grams, notes)).orElseGet(() -> new Wrong(meant.says()));
    }

    /** Whether the first words are a measure depends on the food that the others name. */
    private BatchLine measured(BigDecimal number, List<String> words, List<String> notes) {
        Optional<String> says = Optional.empty();
        for (int taken = Math.min(MEASURE_WORDS, words.size() - 1); taken >= 1; taken--) {
            String measure = String.join(" ", words.subList(0, taken)).toLowerCase(Locale.ROOT);
            String rest = (CANS.contains(measure) ? "canned " : "") + food(words, taken);
            Optional<BigDecimal> spice = foods.seasoning(rest).flatMap(s -> foods.seasoningGrams(rest, measure));
            if (spice.isPresent()) {
                return new Seasoning(foods.seasoning(rest).orElseThrow(), Optional.of(grams(number, spice.get())));
            }
            FoodsMeant.Meant meant = foods.meant(rest);
            Optional<BigDecimal> each = meant.food().flatMap(food -> weighs(food, measure));
            if (each.isPresent()) {
                return mixed(meant.food().orElseThrow(), grams(number, each.get()), notes);
            }
            if (meant.food().isPresent() && (isMeasure(measure) || MILLILITRES.containsKey(measure))) {
                says = Optional.of(noMeasure(meant.food().get(), measure));
            }
        }
        if (says.isPresent()) {
            return new Wrong(says.get());
        }
        FoodsMeant.Meant meant = foods.meant(String.join(" ", words));
        if (meant.food().isEmpty()) {
            return new Wrong(meant.says());
        }
        Food food = meant.food().get();
        return counted(food)
                .map(one -> mixed(food, grams(number, one.grams()), notes))
                .orElseGet(() -> new Wrong(noMeasure(food, "")));
    }

    /** One measure of it; of a can without one, what the first in the shop holds. */
    private Optional<BigDecimal> weighs(Food food, String measure) {
        Optional<BigDecimal> can = CANS.contains(measure)
                ? kitchen.packsOf(food).stream()
                        .filter(pack -> pack.label().startsWith("can"))
                        .findFirst()
                        .map(pack -> pack.grams().multiply(food.edibleShare()))
                : Optional.empty();
        return measure(food, measure).map(Measure::grams).or(() -> can).or(() -> byVolume(food, measure));
    }

    /** What a millilitre and the like weighs, where a cup of it is known. */
    private Optional<BigDecimal> byVolume(Food food, String unit) {
        return Optional.ofNullable(MILLILITRES.get(unit))
                .flatMap(ml -> measure(food, "cup")
                        .map(cup -> cup.grams()
                                .multiply(BigDecimal.valueOf(ml))
                                .divide(MILLILITRES_PER_CUP, MathContext.DECIMAL64)));
    }

    private static BigDecimal grams(BigDecimal number, BigDecimal each) {
        return number.multiply(each).setScale(1, RoundingMode.HALF_UP);
    }

    private Optional<Measure> measure(Food food, String name) {
        return kitchen.measuresOf(food).stream()
                .filter(m ->
                        m.name().equals(name) || MeasureName.plural(m.name()).equals(name))
                .findFirst();
    }

    /** Of any food. */
    private boolean isMeasure(String name) {
        return kitchen.measures().values().stream()
                .flatMap(List::stream)
                .anyMatch(m ->
                        m.name().equals(name) || MeasureName.plural(m.name()).equals(name));
    }

    private Optional<Measure> counted(Food food) {
        return COUNTED_IN.stream()
                .flatMap(name -> measure(food, name).stream())
                .findFirst()
                .or(() -> kitchen.measuresOf(food).stream()
                        .filter(m -> Words.of(food.name()).stream().anyMatch(word -> Words.areOne(word, m.name())))
                        .findFirst());
    }

    private String noMeasure(Food food, String measure) {
        String known = kitchen.measuresOf(food).stream().map(Measure::name).collect(Collectors.joining(", "));
        return (measure.isEmpty()
                        ? "It is not known how much one " + food.name() + " weighs."
                        : capital(food.name()) + " is not known by the " + measure + ".")
                + " Enter a weight" + (known.isEmpty() ? "." : ", or one of these measures: " + known + ".");
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private BatchLine mixed(Food food, BigDecimal grams, List<String> notes) {
        if (grams.compareTo(MOST_GRAMS) > 0 || grams.signum() <= 0) {
            return new Wrong("Enter more than nothing and at most 50 kg.");
        }
        List<CookedYield> known = kitchen.yields().getOrDefault(food, List.of());
        Optional<CookedYield> cooked = CookingProposed.of(food, known);
        boolean said = false;
        Optional<String> part = Optional.empty();
        for (String note : notes) {
            Matcher in = IN_PART.matcher(note.toLowerCase(Locale.ROOT));
            Optional<CookedYield> method = known.stream()
                    .filter(y -> y.method().equals(note.toLowerCase(Locale.ROOT)))
                    .findFirst();
            if (in.matches()) {
                part = Optional.of(in.group(1));
            } else if (method.isPresent() || RAW.contains(note.toLowerCase(Locale.ROOT))) {
                cooked = method;
                said = true;
            } else {
                return new Wrong("\"" + note + "\" is not known of " + food.name()
                        + ". Behind a comma stands how it is cooked (" + methods(known) + "), or its part: in sauce.");
            }
        }
        return new Mixed(food, grams, cooked, said, part);
    }

    private static String methods(List<CookedYield> known) {
        return known.isEmpty()
                ? "raw"
                : known.stream().map(CookedYield::method).collect(Collectors.joining(", ")) + " or raw";
    }
}

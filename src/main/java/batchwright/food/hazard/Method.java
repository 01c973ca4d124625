package batchwright.food.hazard;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the steps of a dish say is done with one of its foods, read by their words: a sentence with "not" before the verb says nothing. */
record Method(Dish dish, Food food) {
    private static final Pattern SENTENCE = Pattern.compile("[.;]");
    private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]+");
    private static final Pattern NOT_HEATED =
            Pattern.compile("\\b(?:not|no|never|without|don't)\\s+(?:need\\s+)?(?:boil|simmer|cook|bake|baking|heat)");
    private static final Pattern HEATS =
            Pattern.compile("\\b(?:boil|simmer|cook|bake|baking|stew|roast|steam|fry|fries|microwave|poach|blanch)");
    private static final Pattern BOILS = Pattern.compile("\\b(?:boil|pressure)");
    private static final Pattern MINUTES =
            Pattern.compile("\\b(?:boil|pressure)[^.;]*?(\\d+)\\s*(?:-\\s*\\d+\\s*)?min");
    /** Of a food's name: they tell how it is sold, not what it is. */
    private static final Set<String> STATES = Set.of(
            "frozen", "fresh", "dried", "sliced", "canned", "white", "black", "great", "small", "large", "northern");

    private static final TimeLaw.Cases<Double> LEAST_MINUTES = new TimeLaw.Cases<>() {
        @Override
        public Double handWork(TimeLaw.HandWork law) {
            return law.minutes();
        }

        @Override
        public Double loads(TimeLaw.Loads law) {
            return law.minutes() + law.each();
        }

        @Override
        public Double power(TimeLaw.Power law) {
            return law.minutes();
        }

        @Override
        public Double byItself(TimeLaw.ByItself law) {
            return (double) law.minutes();
        }

        @Override
        public Double forFive(TimeLaw.ForFive law) {
            return (double) law.minutes();
        }
    };
    private static final Set<String> NOT = Set.of("not", "no", "never");
    private static final int SHORT = 3;

    boolean heats() {
        return cookedByTheMix() || sentences().anyMatch(sentence -> heats(sentence) && speaksOfIt(sentence));
    }

    /** An amount written as boiled, baked and so on. */
    private boolean cookedByTheMix() {
        return parts().flatMap(part -> part.mix().stream())
                .anyMatch(i -> i.food().equals(food) && i.cooked().isPresent());
    }

    private static boolean heats(String sentence) {
        return HEATS.matcher(sentence).find() && !NOT_HEATED.matcher(sentence).find();
    }

    boolean boils(int leastMinutes) {
        return dish.steps().stream()
                .anyMatch(step -> sentences(step)
                        .anyMatch(sentence -> boils(sentence, minutes(step), leastMinutes)
                                && (isForIt(step) || speaksOfIt(sentence))));
    }

    /** By the minutes that stand behind the verb or, where there are none, those of the step. */
    private static boolean boils(String sentence, int minutes, int least) {
        if (!BOILS.matcher(sentence).find() || NOT_HEATED.matcher(sentence).find()) {
            return false;
        }
        Matcher written = MINUTES.matcher(sentence);
        return (written.find() ? Integer.parseInt(written.group(1)) : minutes) >= least;
    }

    /** The least that any way of doing it takes, however small the batch. */
    private static int minutes(Step step) {
        return (int) step.ways().stream()
                .mapToDouble(way -> way.laws().stream()
                        .mapToDouble(law -> law.match(LEAST_MINUTES))
                        .sum())
                .min()
                .orElse(0);
    }

    /** In its text, or as what it is done on. */
    boolean says(List<String> words) {
        return usesOneOf(words)
                || sentences()
                        .map(Method::tokens)
                        .filter(said -> Collections.disjoint(said, NOT))
                        .map(said -> String.join(" ", said))
                        .anyMatch(text -> words.stream().anyMatch(text::contains));
    }

    private boolean usesOneOf(List<String> words) {
        return dish.steps().stream()
                .flatMap(step -> step.ways().stream())
                .flatMap(way -> way.on().stream())
                .anyMatch(appliance -> words.contains(appliance.label()));
    }

    private Stream<Part> parts() {
        return dish.parts().stream().filter(part -> part.shares().containsKey(food));
    }

    private Stream<String> sentences() {
        return dish.steps().stream().flatMap(Method::sentences);
    }

    private static Stream<String> sentences(Step step) {
        return SENTENCE.splitAsStream(step.text().toLowerCase(Locale.ROOT));
    }

    private boolean isForIt(Step step) {
        return parts().anyMatch(part -> step.parts().contains(part.name()));
    }

    /** By a word of the food's name, whole or as the end of a longer one (berries: blueberries), or by the name of its part. */
    private boolean speaksOfIt(String sentence) {
        Set<String> said = Set.copyOf(tokens(sentence));
        return Stream.concat(tokens(food.id()).stream(), tokens(food.name()).stream())
                        .filter(word -> word.length() > SHORT && !STATES.contains(word))
                        .anyMatch(word -> said.stream()
                                .anyMatch(other ->
                                        other.length() > SHORT && (word.endsWith(other) || other.endsWith(word))))
                || parts().anyMatch(part -> said.containsAll(tokens(part.name())));
    }

    /** Small letters, without the s of a plural. */
    private static List<String> tokens(String text) {
        return Arrays.stream(NO_LETTERS.split(text.toLowerCase(Locale.ROOT)))
                .filter(word -> !word.isEmpty())
                .map(Method::singular)
                .toList();
    }

    private static String singular(String word) {
        if (word.length() <= SHORT || !word.endsWith("s") || word.endsWith("ss")) {
            return word;
        }
        return word.endsWith("ies")
                ? word.substring(0, word.length() - SHORT) + "y"
                : word.substring(0, word.length() - 1);
    }
}

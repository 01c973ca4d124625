package batchwright.app;


import batchwright.person.HealthGroup;
import batchwright.person.Sex;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One thing that a profile says, and how to ask for it. The answers are those of a profile's lines.
 *
 * @param key of the profile; of a group group.key
 * @param label short, for a list of answers
 * @param asks the question in full
 * @param example an answer in metric units, and one in those of the United States
 * @param unit added to a bare number, likewise; empty when a number needs none
 * @param needed whether there is no eater without it
 * @param applies whether it is asked, by the answers so far
 */
public record ProfileQuestion(
        String key,
        String label,
        String asks,
        Pair example,
        Pair unit,
        boolean needed,
        Predicate<Map<String, String>> applies) {
    /** Metric units, and those of the United States. */
    public record Pair(String metric, String us) {
        static final Pair NONE = new Pair("", "");

        public String of(boolean isUs) {
            return isUs ? us : metric;
        }
    }

    /** A value of {@code activity} and of {@code body_fat} that leads to more questions. */
    public static final String DIARY = "diary";

    private static final String ESTIMATE = "estimate";
    private static final Pair GIRTH = new Pair("cm", "in");

    private static final List<ProfileQuestion> ALL = all();

    /** In the order in which they are asked and written. */
    public static List<ProfileQuestion> list() {
        return ALL;
    }

    public static Optional<ProfileQuestion> of(String key) {
        return ALL.stream().filter(question -> question.key.equals(key)).findFirst();
    }

    private static List<ProfileQuestion> all() {
        List<ProfileQuestion> all = new ArrayList<>(List.of(
                needed("sex", "sex", "Female or male, as the published equations use it?", same("female")),
                needed("age", "age", "How old are you, in years?", same("27")),
                new ProfileQuestion(
                        "weight",
                        "weight",
                        "What do you weigh in the morning?",
                        new Pair("74 kg", "163 lb"),
                        new Pair("kg", "lb"),
                        true,
                        ProfileQuestion::always),
                new ProfileQuestion(
                        "height",
                        "height",
                        "How tall are you?",
                        new Pair("181 cm", "5 ft 11 in"),
                        new Pair("cm", ""),
                        true,
                        ProfileQuestion::always),
                new ProfileQuestion(
                        "body_fat",
                        "body fat",
                        "Body fat, if it was measured? Or the word estimate: by tape, or else from weight and height.",
                        same("15 %"),
                        same("%"),
                        false,
                        ProfileQuestion::always),
                new ProfileQuestion(
                        "body_fat_method",
                        "how body fat was found",
                        "How was it found: dxa, air, callipers, tape, scale or guess?",
                        same("scale"),
                        Pair.NONE,
                        false,
                        answers -> answers.containsKey("body_fat") && !ESTIMATE.equals(answers.get("body_fat"))),
                girth("neck", "Girth of the neck, below the larynx? Without a tape, leave it out.", "38 cm", "15 in"),
                girth("waist", "Girth of the waist? Men at the navel, women where it is narrowest.", "84 cm", "33 in"),
                girth("hips", "Girth of the hips, where they are widest?", "98 cm", "38 in"),
                needed(
                        "activity",
                        "activity",
                        "How active is the whole day: sedentary, active or vigorous? Or total energy / resting energy as a"
                                + " number such as 1.65, or the word diary to count hours.",
                        same("active")),
                new ProfileQuestion(
                        DIARY,
                        "diary",
                        "An activity and its hours; when a day (24 h) or a week (168 h) is full, only Enter. The command needs"
                                + " --activities lists them.",
                        same("sleeping 8 h"),
                        Pair.NONE,
                        true,
                        answers -> DIARY.equals(answers.get("activity"))),
                needed(
                        "goal",
                        "goal",
                        "What shall your weight do: hold; gain or lose with a rate; or reach a weight by a day?",
                        new Pair("gain 0.25 % a week", "lose 1 lb a week")),
                optional(
                        "experience",
                        "experience with weights",
                        "Experience in training with weights: novice, intermediate or advanced?",
                        "novice")));
        HealthGroup.all().stream().map(ProfileQuestion::health).forEach(all::add);
        return List.copyOf(all);
    }

    private static ProfileQuestion needed(String key, String label, String asks, Pair example) {
        return new ProfileQuestion(key, label, asks, example, Pair.NONE, true, ProfileQuestion::always);
    }

    private static ProfileQuestion optional(String key, String label, String asks, String example) {
        return new ProfileQuestion(key, label, asks, same(example), Pair.NONE, false, ProfileQuestion::always);
    }

    private static ProfileQuestion health(HealthGroup question) {
        String words = question.words();
        return new ProfileQuestion(
                "health." + question.key(),
                words,
                "Yes or no: " + words + "? You need not say.",
                same("no"),
                Pair.NONE,
                false,
                answers -> question.concerns(Sex.FEMALE)
                        && (question.concerns(Sex.MALE) || "female".equals(answers.get("sex"))));
    }

    /** The neck may be left out; whoever gives it gives the others too. */
    private static ProfileQuestion girth(String key, String asks, String metric, String us) {
        boolean first = key.equals("neck");
        return new ProfileQuestion(
                "tape." + key,
                key,
                asks,
                new Pair(metric, us),
                GIRTH,
                !first,
                answers -> ESTIMATE.equals(answers.get("body_fat"))
                        && (first || answers.containsKey("tape.neck"))
                        && (!key.equals("hips") || "female".equals(answers.get("sex"))));
    }

    private static Pair same(String text) {
        return new Pair(text, text);
    }

    private static boolean always(Map<String, String> answers) {
        return true;
    }
}

package batchwright.app;

import batchwright.app.ProfileQuestion.Pair;
import batchwright.app.ProfileQuestion.When;
import batchwright.food.Allergen;
import batchwright.food.origin.Diet;
import batchwright.person.HealthQuestion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Every question of a profile. A usual healthy adult is asked ten of them; details follow only after an answer that needs them. */
final class ProfileQuestions {
    private static final String ESTIMATE = "estimate";

    static final List<ProfileQuestion> ALL = all();

    private ProfileQuestions() {}

    private static List<ProfileQuestion> all() {
        List<ProfileQuestion> all = new ArrayList<>(body());
        all.addAll(activity());
        all.add(new ProfileQuestion(
                ProfileQuestion.HEALTH,
                "health",
                "Does any of this apply to you? Enter the numbers of what does, such as 2 5; or none.",
                Pair.NONE,
                Pair.NONE,
                When.USUALLY,
                ProfileQuestions::always));
        HealthQuestion.all().stream().map(ProfileQuestion::of).forEach(all::add);
        all.add(question(
                "avoid",
                "never",
                "What must never reach you: a diet, allergies, dislikes? Diets and groups are "
                        + Diet.all().stream().map(Diet::name).collect(Collectors.joining(", "))
                        + "; allergens are "
                        + Arrays.stream(Allergen.values()).map(Allergen::label).collect(Collectors.joining(", "))
                        + "; foods and dishes go by their short names. With commas between, or none.",
                Pair.same("peanut, pork_loin"),
                When.USUALLY));
        all.add(question(
                "containers_a_day",
                "cooked boxes a day",
                "How many cooked boxes a day, 1 to 6? Left out it is 3; snacks make up the rest.",
                Pair.same("3"),
                When.USUALLY));
        return List.copyOf(all);
    }

    private static List<ProfileQuestion> body() {
        return List.of(
                question(
                        "sex",
                        "sex",
                        "Female or male, as the published equations use it?",
                        Pair.same("female"),
                        When.NEEDED),
                question("age", "age", "How old are you, in years?", Pair.same("27"), When.NEEDED),
                new ProfileQuestion(
                        ProfileQuestion.HEIGHT,
                        "height",
                        "How tall are you?",
                        new Pair("181 cm", "5 ft 11 in"),
                        new Pair("cm", ""),
                        When.NEEDED,
                        ProfileQuestions::always),
                new ProfileQuestion(
                        "weight",
                        "weight",
                        "What do you weigh in the morning?",
                        new Pair("74 kg", "163 lb"),
                        new Pair("kg", "lb"),
                        When.NEEDED,
                        ProfileQuestions::always),
                new ProfileQuestion(
                        "body_fat",
                        "body fat",
                        "Body fat, if it was measured? Or the word estimate: by tape, or else from weight and height.",
                        Pair.same("15 %"),
                        Pair.same("%"),
                        When.ON_REQUEST,
                        ProfileQuestions::always),
                new ProfileQuestion(
                        "body_fat_method",
                        "how body fat was found",
                        "How was it found: dxa, air, callipers, tape, scale or guess?",
                        Pair.same("scale"),
                        Pair.NONE,
                        When.USUALLY,
                        answers -> answers.containsKey("body_fat") && !ESTIMATE.equals(answers.get("body_fat"))),
                girth(
                        "neck",
                        "How far around is your neck, below the larynx? Leave it out if you have no tape.",
                        "38 cm",
                        "15 in"),
                girth(
                        "waist",
                        "How far around is your waist? Men: at the navel; women: where it is narrowest.",
                        "84 cm",
                        "33 in"),
                girth("hips", "How far around are your hips, where they are widest?", "98 cm", "38 in"),
                question(
                        "goal",
                        "goal",
                        "What should your weight do: hold, gain or lose at a rate, or reach a weight by a date?",
                        new Pair("gain 0.25 % a week", "lose 1 lb a week"),
                        When.NEEDED));
    }

    private static List<ProfileQuestion> activity() {
        return List.of(
                question(
                        ProfileQuestion.ACTIVITY,
                        "activity",
                        "What fills your day: chair_bound, sitting, standing, carrying or heavy? Or the level of the whole day,"
                                + " training included: sedentary, active or vigorous, or total energy / resting energy such as 1.65; or"
                                + " diary, to count hours.",
                        Pair.same("sitting"),
                        When.NEEDED),
                new ProfileQuestion(
                        "day",
                        "day",
                        "What fills your day: chair_bound, sitting, standing, carrying or heavy?",
                        Pair.same("sitting"),
                        Pair.NONE,
                        When.NEEDED,
                        ProfileQuestions::byFacts),
                new ProfileQuestion(
                        "steps",
                        "steps a day",
                        "Steps on a usual day, training left out?",
                        Pair.same("6000"),
                        Pair.NONE,
                        When.ON_REQUEST,
                        ProfileQuestions::byFacts),
                new ProfileQuestion(
                        "training",
                        "training a week",
                        "Do you train, with weights or otherwise? Enter each activity with its time in a week, or none. The list of"
                                + " activities has the names.",
                        Pair.same("3 h weights, 45 min jogging"),
                        Pair.NONE,
                        When.USUALLY,
                        ProfileQuestions::byFacts),
                new ProfileQuestion(
                        ProfileQuestion.DIARY,
                        "diary",
                        "An activity and its hours; when a day (24 h) or a week (168 h) is full, only Enter. The list of"
                                + " activities names them.",
                        Pair.same("sleeping 8 h"),
                        Pair.NONE,
                        When.NEEDED,
                        answers -> ProfileQuestion.DIARY.equals(answers.get("activity"))),
                new ProfileQuestion(
                        "strength_training",
                        "training with weights",
                        "Do you train with weights, and how often: no, or how many times a week?",
                        Pair.same("3 times a week"),
                        Pair.same("times a week"),
                        When.USUALLY,
                        answers -> answers.containsKey("activity")
                                && !ProfileQuestion.FACTS.equals(answers.get("activity"))),
                question(
                        "experience",
                        "experience with weights",
                        "Experience in training with weights: novice, intermediate or advanced?",
                        Pair.same("novice"),
                        When.ON_REQUEST));
    }

    private static ProfileQuestion question(String key, String label, String asks, Pair example, When when) {
        return new ProfileQuestion(key, label, asks, example, Pair.NONE, when, ProfileQuestions::always);
    }

    /** The neck may be left out; whoever gives it gives the others too. */
    private static ProfileQuestion girth(String key, String asks, String metric, String us) {
        boolean first = key.equals("neck");
        return new ProfileQuestion(
                "tape." + key,
                key,
                asks,
                new Pair(metric, us),
                new Pair("cm", "in"),
                first ? When.USUALLY : When.NEEDED,
                answers -> ESTIMATE.equals(answers.get("body_fat"))
                        && (first || answers.containsKey("tape.neck"))
                        && (!key.equals("hips") || "female".equals(answers.get("sex"))));
    }

    private static boolean always(Map<String, String> answers) {
        return true;
    }

    private static boolean byFacts(Map<String, String> answers) {
        return ProfileQuestion.FACTS.equals(answers.get("activity"));
    }
}

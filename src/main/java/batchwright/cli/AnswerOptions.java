package batchwright.cli;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The answers of a profile as options, each in the words of a profile. */
final class AnswerOptions {
    private static final String NONE = "none";

    @Option(names = "--sex", paramLabel = "SEX", description = "female or male, as the published equations use it.")
    private @Nullable String sex;

    @Option(names = "--age", paramLabel = "YEARS", description = "Age in years.")
    private @Nullable String age;

    @Option(names = "--weight", paramLabel = "WEIGHT", description = "Such as \"74 kg\" or \"163 lb\".")
    private @Nullable String weight;

    @Option(names = "--height", paramLabel = "HEIGHT", description = "Such as \"181 cm\" or \"5 ft 11 in\".")
    private @Nullable String height;

    @Option(
            names = "--body-fat",
            paramLabel = "SHARE",
            description = "Such as \"15 %%\" when it was measured, or estimate.")
    private @Nullable String bodyFat;

    @Option(
            names = "--body-fat-method",
            paramLabel = "WORD",
            description = "How it was found: dxa, air, callipers, tape, scale or guess.")
    private @Nullable String bodyFatMethod;

    @Option(
            names = "--tape",
            paramLabel = "GIRTH=LENGTH",
            description = "For an estimate: neck, waist and of women hips, such as --tape \"neck=38 cm\".")
    private Map<String, String> tape = new LinkedHashMap<>();

    @Option(
            names = "--activity",
            paramLabel = "LEVEL",
            description = "sedentary, active, vigorous, a number such as 1.65, facts, or diary.")
    private @Nullable String activity;

    @Option(
            names = "--day",
            paramLabel = "WORD",
            description = "What fills the day: chair_bound, sitting, standing, carrying or heavy.")
    private @Nullable String day;

    @Option(names = "--steps", paramLabel = "N", description = "Steps on a usual day, training left out.")
    private @Nullable String steps;

    @Option(
            names = "--walking",
            paramLabel = "TIME",
            description = "Instead of steps: walking a day, such as \"40 min\".")
    private @Nullable String walking;

    @Option(
            names = "--training",
            paramLabel = "LIST",
            description = "Hours a week, such as \"3 h weights, 1 h jogging\", or none.")
    private @Nullable String training;

    @Option(
            names = "--diary",
            paramLabel = "ACTIVITY=TIME",
            description = "A line of the diary, such as --diary \"sleeping=8 h\"; together a day or a week.")
    private Map<String, String> diary = new LinkedHashMap<>();

    @Option(
            names = "--goal",
            paramLabel = "GOAL",
            description =
                    "hold, \"gain 0.25 %% a week\", \"lose 1 lb a week\", \"lose 300 kcal a day\", \"reach 78 kg by 2027-03-01\".")
    private @Nullable String goal;

    @Option(
            names = "--strength-training",
            paramLabel = "TIMES",
            description = "With weights: no, or such as \"3 times a week\".")
    private @Nullable String strengthTraining;

    @Option(
            names = "--experience",
            paramLabel = "WORD",
            description = "With weights: novice, intermediate or advanced.")
    private @Nullable String experience;

    @Option(
            names = "--health",
            paramLabel = "QUESTION=ANSWER",
            mapFallbackValue = "yes",
            description = "An answer about health, such as --health gout=yes or --health organs=no; or --health none.")
    private Map<String, String> health = new LinkedHashMap<>();

    @Option(
            names = "--avoid",
            paramLabel = "LIST",
            description =
                    "Diets, allergens, foods and dishes: what must never reach you, such as \"vegetarian, peanut\".")
    private @Nullable String avoid;

    @Option(names = "--containers-a-day", paramLabel = "N", description = "Cooked boxes a day, 1 to 6.")
    private @Nullable String containersADay;

    boolean any() {
        return !answers().isEmpty();
    }

    void putInto(ProfileAnswers profile) {
        profile.putAll(answers());
    }

    private Map<String, String> answers() {
        Map<String, String> answers = new LinkedHashMap<>();
        put(answers, "sex", sex);
        put(answers, "age", age);
        put(answers, "weight", weight);
        put(answers, "height", height);
        put(answers, "body_fat", bodyFat);
        put(answers, "body_fat_method", bodyFatMethod);
        tape.forEach((girth, length) -> answers.put("tape." + girth, length));
        put(answers, "activity", activity);
        put(answers, "day", day);
        put(answers, "steps", steps);
        put(answers, "walking", walking);
        put(answers, "training", training);
        diary.forEach((line, time) -> answers.put(ProfileQuestion.DIARY + "." + line, time));
        put(answers, "goal", goal);
        put(answers, "strength_training", strengthTraining);
        put(answers, "experience", experience);
        if (health.containsKey(NONE)) {
            answers.put(ProfileQuestion.HEALTH, NONE);
        }
        health.entrySet().stream()
                .filter(answer -> !answer.getKey().equals(NONE))
                .forEach(answer -> answers.put("health." + answer.getKey(), answer.getValue()));
        put(answers, "avoid", avoid);
        put(answers, "containers_a_day", containersADay);
        return answers;
    }

    private static void put(Map<String, String> answers, String key, @Nullable String answer) {
        if (answer != null) {
            answers.put(key, answer);
        }
    }

    /** The option that answers a question. */
    static String of(String key) {
        int dot = key.indexOf('.');
        return dot < 0
                ? "--" + key.replace('_', '-')
                : "--" + key.substring(0, dot) + " " + key.substring(dot + 1) + "=";
    }
}

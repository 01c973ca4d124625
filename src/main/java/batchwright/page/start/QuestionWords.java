package batchwright.page.start;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.app.profile.UsualUnits;
import batchwright.food.Allergen;
import batchwright.food.origin.Diet;
import batchwright.person.HealthGroup;
import batchwright.person.UsualDay;
import batchwright.report.html.web.QuestionPage.Answer;
import batchwright.report.html.web.QuestionPage.Asked;
import batchwright.report.html.web.QuestionPage.Choice;
import batchwright.report.html.web.QuestionPage.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A question of a profile as a page asks it: with what can be chosen in place of words that one would have to know. */
final class QuestionWords {
    static final String NONE = "none";
    private static final int MOST_BOXES = 6;

    private final ProfileAnswers answers;

    QuestionWords(ProfileAnswers answers) {
        this.answers = answers;
    }

    /** The question itself. */
    String heading(ProfileQuestion question) {
        return switch (question.key()) {
            case "sex" -> "Female or male?";
            case ProfileQuestion.ACTIVITY -> "What fills your day?";
            case "training" -> "Do you train?";
            case "goal" -> "What should your weight do?";
            case ProfileQuestion.HEALTH -> "Does any of this apply to you?";
            case "avoid" -> "What must never reach you?";
            case "containers_a_day" -> "How many cooked boxes a day?";
            default -> firstSentence(question.asks());
        };
    }

    private static String firstSentence(String asks) {
        int end = asks.indexOf("? ");
        return end < 0 ? asks : asks.substring(0, end + 1);
    }

    Asked asked(ProfileQuestion question) {
        String example = new UsualUnits(answers).hint(question);
        return switch (question.key()) {
            case "sex" ->
                one(
                        question,
                        "As the published equations use it.",
                        "",
                        new Choice("female", "Female"),
                        new Choice("male", "Male"));
            case ProfileQuestion.ACTIVITY, "day" ->
                one(
                        question,
                        "Training is asked for on the next page.",
                        "",
                        Arrays.stream(UsualDay.values())
                                .map(day -> new Choice(day.label(), capital(day.meaning())))
                                .toArray(Choice[]::new));
            case "goal" ->
                one(
                        question,
                        "Slow is kept up longer. Another rate, or a weight by a date, goes below.",
                        "Or in words, such as lose 1 lb a week, or reach 70 kg by 2027-03-01",
                        new Choice("hold", "Hold it"),
                        new Choice("lose 0.25 % a week", "Lose slowly: 0.25 % of it a week"),
                        new Choice("lose 0.5 % a week", "Lose: 0.5 % of it a week"),
                        new Choice("gain 0.25 % a week", "Gain: 0.25 % of it a week"));
            case "training" ->
                words(
                        question,
                        "With weights or otherwise: each activity with its time in a week, with commas between; or none. "
                                + example,
                        "Training in a week");
            case ProfileQuestion.HEALTH ->
                new Asked(
                        question.key(),
                        "Tick what does. Left out, no loss of weight is planned.",
                        Kind.ANY,
                        Stream.concat(
                                        answers.openGroups().stream()
                                                .map(group -> new Choice(group.key(), capital(group.words()))),
                                        Stream.of(new Choice(NONE, "None of these")))
                                .toList(),
                        "");
            case "avoid" ->
                new Asked(
                        question.key(),
                        "Allergies, diets, dislikes. Dishes that hold any of it never reach you.",
                        Kind.ANY,
                        avoidable(),
                        "Others, by the names of foods and dishes, with commas between");
            case "containers_a_day" ->
                one(
                        question,
                        "Usual are three; snacks make up the rest.",
                        "",
                        IntStream.rangeClosed(1, MOST_BOXES)
                                .mapToObj(n -> new Choice(Integer.toString(n), Integer.toString(n)))
                                .toArray(Choice[]::new));
            default -> other(question, example);
        };
    }

    private static Asked other(ProfileQuestion question, String example) {
        if (!question.key().startsWith(ProfileQuestion.HEALTH + ".")) {
            return words(question, example, "Your answer");
        }
        List<Choice> choices = new ArrayList<>(List.of(new Choice("no", "No"), new Choice("yes", "Yes")));
        if (question.asks().contains("agreed:")) {
            choices.add(new Choice("agreed", "Yes, and whoever treats me agrees to the goal"));
        }
        return one(question, "", "", choices.toArray(new Choice[0]));
    }

    private static Asked one(ProfileQuestion question, String hint, String words, Choice... choices) {
        return new Asked(question.key(), hint, Kind.ONE, List.of(choices), words);
    }

    private static Asked words(ProfileQuestion question, String hint, String words) {
        return new Asked(question.key(), hint.strip(), Kind.WORDS, List.of(), words);
    }

    private static List<Choice> avoidable() {
        return Stream.concat(
                        Diet.all().stream()
                                .map(diet -> new Choice(
                                        diet.name(), capital(diet.name().replace('_', ' ')))),
                        Arrays.stream(Allergen.values())
                                .map(allergen -> new Choice(allergen.id(), capital(allergen.label()))))
                .toList();
    }

    /** What was answered before, in the fields of the question. */
    Answer answered(ProfileQuestion question) {
        String said = answers.all().getOrDefault(question.key(), "");
        return switch (question.key()) {
            case ProfileQuestion.ACTIVITY -> chosen(List.of(answers.all().getOrDefault("day", said)), question);
            case ProfileQuestion.HEALTH -> new Answer(groups(), "");
            case "avoid" ->
                chosen(Arrays.stream(said.split(",")).map(String::strip).toList(), question);
            default -> said.isEmpty() ? Answer.NONE : chosen(List.of(said), question);
        };
    }

    private List<String> groups() {
        List<String> yes = HealthGroup.all().stream()
                .map(HealthGroup::key)
                .filter(key -> "yes".equals(answers.all().get(ProfileQuestion.healthKey(key))))
                .toList();
        return yes.isEmpty() && answers.has(ProfileQuestion.HEALTH) ? List.of(NONE) : yes;
    }

    private Answer chosen(List<String> said, ProfileQuestion question) {
        List<String> choices =
                asked(question).choices().stream().map(Choice::value).toList();
        return new Answer(
                said.stream().filter(choices::contains).toList(),
                String.join(
                        ", ",
                        said.stream()
                                .filter(s -> !choices.contains(s) && !s.equals(NONE))
                                .toList()));
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

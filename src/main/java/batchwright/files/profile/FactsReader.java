package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.person.ActivityFacts;
import batchwright.person.Compendium2011;
import batchwright.person.Diary;
import batchwright.person.ListedActivity;
import batchwright.person.UsualDay;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Activity by what can be counted: {@code day}, {@code steps} or {@code walking}, and {@code training}. */
final class FactsReader {
    static final List<String> KEYS = List.of("day", "steps", "walking", "training");

    private static final List<String> DAYS =
            Arrays.stream(UsualDay.values()).map(UsualDay::label).toList();
    private static final NumberRange STEPS =
            NumberRange.of("steps", "0", "40000", "", "those of a usual day, training left out");
    private static final int MOST_WALKING_MINUTES = 8 * 60;
    private static final int MOST_TRAINING_MINUTES = 35 * 60;
    private static final String NONE = "none";
    private static final Pattern TIME_AND_ACTIVITY = Pattern.compile("(.*\\d.*?)\\s+(\\S+)");
    private static final String EXAMPLE =
            "expected hours a week and an activity, such as 3 h weights, 45 min jogging; or none";

    private final Map<String, ListedActivity> known = Compendium2011.activities();
    private final Problems problems;
    private final double ageYears;

    FactsReader(Problems problems, double ageYears) {
        this.problems = problems;
        this.ageYears = ageYears;
    }

    /** Empty when there is a problem with it. */
    Optional<ActivityFacts> read(Fields fields) {
        int before = problems.errors();
        Optional<UsualDay> day = fields.need("day", "Enter what fills your day: " + String.join(", ", DAYS))
                .flatMap(this::day);
        int steps = steps(fields);
        List<Diary.Entry> training = fields.oneOrMore("training", EXAMPLE).stream()
                .flatMap(written -> training(written).stream())
                .toList();
        return problems.errors() > before
                ? Optional.empty()
                : day.map(usual -> new ActivityFacts(usual, steps, training, ageYears));
    }

    private Optional<UsualDay> day(Written written) {
        Optional<UsualDay> day = UsualDay.of(written.text());
        if (day.isEmpty()) {
            problems.unknown(
                    written,
                    "there is no kind of day called " + written.quoted(),
                    "expected one of " + String.join(", ", DAYS),
                    DAYS);
        }
        return day;
    }

    private int steps(Fields fields) {
        Optional<Written> walking = fields.text("walking");
        if (walking.isPresent() && fields.has("steps")) {
            problems.error(walking.get(), "the walk is in the steps already", "expected steps or walking, not both");
            return 0;
        }
        return walking.flatMap(this::walked)
                .map(minutes -> ActivityFacts.USUAL_STEPS + minutes * ActivityFacts.STEPS_A_MINUTE)
                .or(() -> fields.whole("steps", STEPS))
                .orElse(ActivityFacts.USUAL_STEPS);
    }

    private Optional<Integer> walked(Written written) {
        return written.text().equals(NONE)
                ? Optional.of(0)
                : HoursGrammar.read(written, problems)
                        .filter(minutes -> isAtMost(minutes, MOST_WALKING_MINUTES, "a day of walking", written));
    }

    private List<Diary.Entry> training(Written written) {
        if (written.text().equals(NONE)) {
            return List.of();
        }
        List<Diary.Entry> entries = new ArrayList<>();
        var once = new Once(problems);
        for (String part : written.text().split(",", -1)) {
            entry(new Written(part.strip(), written.at()), once).ifPresent(entries::add);
        }
        int minutes = entries.stream().mapToInt(Diary.Entry::minutes).sum();
        return isAtMost(minutes, MOST_TRAINING_MINUTES, "a week of training", written) ? entries : List.of();
    }

    private Optional<Diary.Entry> entry(Written written, Once once) {
        Matcher form = TIME_AND_ACTIVITY.matcher(written.text());
        if (!form.matches()) {
            problems.error(written, written.quoted() + " is not a time and an activity", EXAMPLE);
            return Optional.empty();
        }
        var id = new Written(form.group(2), written.at());
        Optional<ListedActivity> activity = activity(id);
        if (activity.isEmpty() || !once.isNew("the activity " + id.text(), id)) {
            return Optional.empty();
        }
        return HoursGrammar.read(new Written(form.group(1), written.at()), problems)
                .map(minutes -> new Diary.Entry(activity.get(), minutes));
    }

    private Optional<ListedActivity> activity(Written id) {
        Optional<ListedActivity> found = Optional.ofNullable(known.get(id.text()))
                .filter(activity -> activity.isTraining() || activity.isWalking());
        if (found.isEmpty()) {
            problems.unknown(
                    id,
                    "there is no training called " + id.quoted(),
                    "expected exercise, sport or walking of the list of activities",
                    known.values().stream()
                            .filter(activity -> activity.isTraining() || activity.isWalking())
                            .map(ListedActivity::id)
                            .toList());
        }
        return found;
    }

    private boolean isAtMost(int minutes, int most, String what, Written written) {
        if (minutes <= most) {
            return true;
        }
        problems.error(
                written,
                HoursGrammar.written(minutes) + " is more than " + what + " can be",
                "expected at most " + HoursGrammar.written(most));
        return false;
    }
}

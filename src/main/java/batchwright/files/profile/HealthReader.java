package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.Problems;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.HealthGroup;
import batchwright.person.HealthQuestion;
import batchwright.text.Written;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Answers to questions of health: one by one, or a group of them at once. A question's answer goes before its group's. */
final class HealthReader {
    /** From when one question stood for several; a yes does not tell which. */
    private static final String DIABETES_MEDICINE = "diabetes_medicine";

    private static final String ITS_GROUP = "sugar_or_weight_medicine";
    /** Its no says nothing of medicine that is taken for heart, kidneys or weight too. */
    private static final List<String> ITS_QUESTIONS =
            List.of("insulin", "sulfonylurea_or_glinide", "metformin_or_gliptin");

    private static final List<String> GROUPS =
            HealthGroup.all().stream().map(HealthGroup::key).toList();
    private static final List<String> KEYS = Stream.of(
                    GROUPS.stream(),
                    HealthQuestion.all().stream().map(HealthQuestion::key),
                    Stream.of(DIABETES_MEDICINE, Health.DOCTOR_AGREES))
            .flatMap(keys -> keys)
            .toList();
    private static final Map<String, Answer> ANSWERS =
            Map.of("yes", Answer.YES, "no", Answer.NO, "agreed", Answer.AGREED);

    private final Problems problems;

    HealthReader(Problems problems) {
        this.problems = problems;
    }

    Health read(Yaml.Group group) {
        Fields fields = Fields.of(
                group,
                KEYS,
                "expected one of " + GROUPS.stream().collect(Collectors.joining(", "))
                        + ", or a single question of theirs",
                problems);
        Health health = Health.NOT_SAID;
        for (HealthQuestion question : HealthQuestion.all()) {
            Optional<Answer> answer = fields.text(question.key()).flatMap(this::answer);
            if (answer.isPresent()) {
                health = health.with(question, answer.get());
            }
        }
        health = withOlder(health, fields.yesNo(DIABETES_MEDICINE));
        for (HealthGroup asked : HealthGroup.all()) {
            health = withGroup(health, asked, fields.yesNo(asked.key()));
        }
        return health.withDoctorAgrees(fields.yesNo(Health.DOCTOR_AGREES)
                .map(yes -> yes ? Answer.YES : Answer.NO)
                .orElse(Answer.NOT_SAID));
    }

    private static Health withGroup(Health health, HealthGroup group, Optional<Boolean> applies) {
        return applies.map(yes -> yes ? health.withSome(group) : health.withNone(group))
                .orElse(health);
    }

    private static Health withOlder(Health before, Optional<Boolean> applies) {
        if (applies.isEmpty() || applies.get()) {
            return withGroup(before, HealthGroup.of(ITS_GROUP), applies);
        }
        Health health = before;
        for (String key : ITS_QUESTIONS) {
            HealthQuestion question = HealthQuestion.of(key);
            if (health.answer(question) == Answer.NOT_SAID) {
                health = health.with(question, Answer.NO);
            }
        }
        return health;
    }

    private Optional<Answer> answer(Written written) {
        Optional<Answer> answer = Optional.ofNullable(ANSWERS.get(written.text().toLowerCase(Locale.ROOT)));
        if (answer.isEmpty()) {
            problems.error(
                    written,
                    written.quoted() + " is no answer to this",
                    "expected yes or no; or agreed: yes, and whoever treats you agrees to the goal");
        }
        return answer;
    }
}

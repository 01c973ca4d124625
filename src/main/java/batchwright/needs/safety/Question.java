package batchwright.needs.safety;

import batchwright.person.BodyFat;
import batchwright.person.Eater;
import batchwright.person.FatMethod;
import batchwright.person.Health.Answer;
import batchwright.person.HealthEffect;
import batchwright.person.HealthQuestion;
import batchwright.person.Sex;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** A fact that a decision waits for: the good answer makes it a warning, any other a refusal. */
@SuppressWarnings("ImmutableEnumChecker") // both fields hold what cannot change
public enum Question {
    DOCTOR_AGREES(
            "Has a doctor or dietitian agreed to this goal? Add to the profile, under health: doctor_agrees: yes, or no.",
            List.of("health.doctor_agrees"),
            Question::ofDoctor),
    REFEEDING_SIGNS(
            "Is there anything else that makes it dangerous to eat more at once? Answer in the profile, under health:"
                    + " eating_disorder, weight_lost, sugar_or_weight_medicine, other_medicine, organs and alcohol.",
            List.of(
                    "health.eating_disorder",
                    "health.weight_lost",
                    "health.sugar_or_weight_medicine",
                    "health.other_medicine",
                    "health.organs",
                    "health.alcohol"),
            Question::ofRefeeding),
    UNMEANT_LOSS(
            "Was weight lost without trying? Add to the profile, under health: lost_weight_without_trying: yes, or no.",
            List.of("health.lost_weight_without_trying"),
            eater -> ofHealth(eater, "lost_weight_without_trying")),
    MEASURED_FAT(
            "How much of the weight is fat? A plan needs 20 % (men) or 30 % (women), measured. Add to the profile body_fat and"
                    + " body_fat_method: dxa, air, callipers, tape or scale; and answer eating_disorder.",
            List.of("body_fat", "body_fat_method", "health.eating_disorder"),
            eater -> worst(fatIsEnough(eater), ofHealth(eater, "eating_disorder"))),
    FAT_METHOD(
            "How was body fat measured? Add to the profile body_fat_method: dxa, air, callipers, tape or scale; or lose at most"
                    + " 0.5 % a week.",
            List.of("body_fat_method"), Question::methodIsSaid),
    LEAN(
            "Is the weight muscle, or does a doctor or dietitian agree to this goal? Add to the profile a measured body_fat with"
                    + " its body_fat_method (lean is under 20 % of men, 30 % of women); or, under health: doctor_agrees: yes, or no.",
            List.of("body_fat", "body_fat_method", "health.doctor_agrees"),
            eater -> isLean(eater) ? Reply.GOOD : ofDoctor(eater));

    /** How a profile answers, from good to worst. */
    public enum Reply {
        GOOD,
        OPEN,
        BAD
    }

    private static final double LEAN_PERCENT_MALE = 20;
    private static final double LEAN_PERCENT_FEMALE = 30;

    private final String asks;
    private final List<String> keys;
    private final Function<Eater, Reply> reply;

    Question(String asks, List<String> keys, Function<Eater, Reply> reply) {
        this.asks = asks;
        this.keys = List.copyOf(keys);
        this.reply = reply;
    }

    /** In words, with the line of a profile that answers. */
    public String asks() {
        return asks;
    }

    /** Keys of a profile that answer; of a group group.key. */
    public List<String> keys() {
        return keys;
    }

    Reply reply(Eater eater) {
        return reply.apply(eater);
    }

    private static Reply ofDoctor(Eater eater) {
        return switch (eater.health().doctorAgrees()) {
            case YES, AGREED -> Reply.GOOD;
            case NO -> Reply.BAD;
            case NOT_SAID -> Reply.OPEN;
        };
    }

    private static Reply ofHealth(Eater eater, String question) {
        return switch (eater.health().answer(HealthQuestion.of(question))) {
            case NO, AGREED -> Reply.GOOD;
            case YES -> Reply.BAD;
            case NOT_SAID -> Reply.OPEN;
        };
    }

    /** Two signs together, and days with hardly any food, are refused by the answers themselves. */
    private static Reply ofRefeeding(Eater eater) {
        Reply signs = HealthQuestion.all().stream()
                        .filter(question -> question.has(HealthEffect.REFEEDING_BY_LOSS)
                                || question.has(HealthEffect.REFEEDING_BY_MEDICINE)
                                || question.key().equals("hardly_ate"))
                        .allMatch(question -> eater.health().answer(question) != Answer.NOT_SAID)
                ? Reply.GOOD
                : Reply.OPEN;
        return worst(signs, ofHealth(eater, "lost_weight_without_trying"), ofHealth(eater, "eating_disorder"));
    }

    private static Reply worst(Reply... replies) {
        return Stream.of(replies).max(Reply::compareTo).orElse(Reply.GOOD);
    }

    private static Reply fatIsEnough(Eater eater) {
        return measured(eater)
                .map(fat -> fat.fat().percent() < leanPercent(eater) ? Reply.BAD : Reply.GOOD)
                .orElse(Reply.OPEN);
    }

    private static boolean isLean(Eater eater) {
        return measured(eater)
                .filter(fat -> fat.fat().percent() < leanPercent(eater))
                .isPresent();
    }

    private static Reply methodIsSaid(Eater eater) {
        return measured(eater).filter(fat -> fat.method() != FatMethod.NOT_SAID).isPresent() ? Reply.GOOD : Reply.OPEN;
    }

    private static Optional<BodyFat.Measured> measured(Eater eater) {
        return eater.body()
                .fat()
                .filter(BodyFat.Measured.class::isInstance)
                .map(BodyFat.Measured.class::cast)
                .filter(fat -> fat.method().measures());
    }

    private static double leanPercent(Eater eater) {
        return eater.body().sex() == Sex.MALE ? LEAN_PERCENT_MALE : LEAN_PERCENT_FEMALE;
    }
}

package batchwright.needs.safety;

import batchwright.person.AskedFact;
import batchwright.person.BodyFat;
import batchwright.person.Eater;
import batchwright.person.FatMethod;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import batchwright.person.Sex;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** A fact that a decision waits for: the good answer makes it a warning, any other a refusal. */
public enum Question {
    DOCTOR_AGREES(
            "Has a doctor or dietitian agreed to this goal? Add to the profile, under health: doctor_agrees: yes, or no.",
            List.of("health.doctor_agrees"),
            eater -> ofFact(eater, AskedFact.DOCTOR_AGREES, Answer.YES)),
    REFEEDING_SIGNS(
            "Is there any of these: much alcohol; insulin, water tablets, drugs against acid or chemotherapy; low potassium,"
                    + " phosphate or magnesium; more than 10 % of weight lost in half a year? Add to the profile, under health:"
                    + " refeeding_signs: yes, or no; and answer hardly_ate, lost_weight_without_trying and eating_disorder.",
            List.of(
                    "health.refeeding_signs",
                    "health.hardly_ate",
                    "health.lost_weight_without_trying",
                    "health.eating_disorder"),
            eater -> worst(
                    ofFact(eater, AskedFact.REFEEDING_SIGNS, Answer.NO),
                    ofHealth(eater, HealthQuestion.HARDLY_ATE),
                    ofHealth(eater, HealthQuestion.LOST_WEIGHT_WITHOUT_TRYING),
                    ofHealth(eater, HealthQuestion.EATING_DISORDER))),
    UNMEANT_LOSS(
            "Was weight lost without trying? Add to the profile, under health: lost_weight_without_trying: yes, or no.",
            List.of("health.lost_weight_without_trying"),
            eater -> ofHealth(eater, HealthQuestion.LOST_WEIGHT_WITHOUT_TRYING)),
    MEASURED_FAT(
            "How much of the weight is fat? A plan needs 20 % (men) or 30 % (women), measured. Add to the profile body_fat and"
                    + " body_fat_method: dxa, air, callipers, tape or scale; and answer eating_disorder.",
            List.of("body_fat", "body_fat_method", "health.eating_disorder"),
            eater -> worst(fatIsEnough(eater), ofHealth(eater, HealthQuestion.EATING_DISORDER))),
    FAT_METHOD(
            "How was body fat measured? Add to the profile body_fat_method: dxa, air, callipers, tape or scale; or lose at most"
                    + " 0.5 % a week.",
            List.of("body_fat_method"),
            Question::methodIsSaid),
    LEAN(
            "Is the weight muscle, or does a doctor or dietitian agree to this goal? Add to the profile a measured body_fat with"
                    + " its body_fat_method (lean is under 20 % of men, 30 % of women); or, under health: doctor_agrees: yes, or no.",
            List.of("body_fat", "body_fat_method", "health.doctor_agrees"),
            eater -> isLean(eater) ? Reply.GOOD : ofFact(eater, AskedFact.DOCTOR_AGREES, Answer.YES)),
    EATING_DISORDER(
            "Is there one, now or in the past? Add to the profile, under health: eating_disorder: yes, or no.",
            List.of("health.eating_disorder"),
            eater -> ofHealth(eater, HealthQuestion.EATING_DISORDER)),
    PREGNANCY(
            "Are you pregnant or breastfeeding? Add to the profile, under health: pregnant_or_breastfeeding: yes, or no.",
            List.of("health.pregnant_or_breastfeeding"),
            eater -> ofHealth(eater, HealthQuestion.PREGNANT_OR_BREASTFEEDING));

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

    private static Reply ofFact(Eater eater, AskedFact fact, Answer good) {
        return reply(eater.health().answer(fact), good);
    }

    private static Reply ofHealth(Eater eater, HealthQuestion question) {
        return reply(eater.health().answer(question), Answer.NO);
    }

    private static Reply reply(Answer answer, Answer good) {
        if (answer == Answer.NOT_SAID) {
            return Reply.OPEN;
        }
        return answer == good ? Reply.GOOD : Reply.BAD;
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
        return measured(eater).filter(fat -> fat.fat().percent() < leanPercent(eater)).isPresent();
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

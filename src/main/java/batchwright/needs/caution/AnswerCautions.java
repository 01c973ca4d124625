package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.person.Eater;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Cautions that follow from a yes to a question of health, and from no answer. A yes stops planning, whatever the goal. */
final class AnswerCautions {
    private static final Citation CLINICAL =
            Citation.designChoice("stop where general clinical guidance asks for a clinician");
    private static final Citation KIDNEY = Citation.designChoice(
            "stop, because kidney disease asks for far less protein than is planned here: KDOQI 2020, KDIGO 2024, from memory");

    private AnswerCautions() {}

    static List<Caution> of(Eater eater) {
        Stream<Caution> yes = Stream.of(HealthQuestion.values())
                .filter(eater.health()::isYes)
                .flatMap(question -> said(question).stream());
        return Stream.concat(yes, notSaid(eater).stream()).toList();
    }

    /** Empty where another class decides: by the goal for diabetes, beside a low weight for days without food. */
    private static Optional<Caution> said(HealthQuestion question) {
        return switch (question) {
            case EATING_DISORDER ->
                Optional.of(Caution.hide(
                        question.key(),
                        "Eating by numbers can do harm with an eating disorder, now or in the past, so none are shown and no plan"
                                + " is made. Please talk to your doctor or an eating-disorder service: they can plan with you. When"
                                + " you feel faint or in danger, call the emergency number where you live.",
                        CLINICAL));
            case PREGNANT_OR_BREASTFEEDING ->
                stop(
                        question,
                        "Pregnancy and breastfeeding change what a body needs, and this program does not plan for them: its figures"
                                + " leave them out. Your midwife, doctor or dietitian can plan with you.",
                        CLINICAL);
            case KIDNEY_DISEASE ->
                stop(
                        question,
                        "The protein planned here can be too much for kidneys that are ill, so no plan is made. Ask your doctor or"
                                + " renal dietitian how much protein is right for you.",
                        KIDNEY);
            case HEART_FAILURE ->
                stop(
                        question,
                        "With heart failure salt, drink and weight have to be watched by your doctor, so no plan is made.",
                        CLINICAL);
            case CANCER ->
                stop(
                        question,
                        "Cancer and its treatment change what a body needs and can use, so no plan is made. Your doctor or an"
                                + " oncology dietitian can plan with you.",
                        CLINICAL);
            case GALLSTONES ->
                stop(
                        question,
                        "A change of weight or of fat can bring an attack of gallstones on, so no plan is made. Ask your doctor.",
                        CLINICAL);
            case RECENT_SURGERY ->
                stop(
                        question,
                        "After surgery a body needs more of some things and may not take others, so no plan is made. Ask the doctor"
                                + " who treats you when and what to eat.",
                        CLINICAL);
            case LITHIUM ->
                stop(
                        question,
                        "Another diet changes salt and drink, and with them how much lithium is in the blood, so no plan is made. Ask"
                                + " your doctor before you change it.",
                        CLINICAL);
            case WARFARIN ->
                stop(
                        question,
                        "Another diet changes vitamin K, and with it what warfarin does, so no plan is made. Ask the doctor or clinic"
                                + " that checks your blood before you change it.",
                        CLINICAL);
            case MAO_INHIBITOR ->
                stop(
                        question,
                        "With an MAO inhibitor some foods, such as ripe cheese, cured meat and soy sauce, can raise blood pressure"
                                + " dangerously. This program does not know them apart, so no plan is made. Ask your doctor or"
                                + " pharmacist.",
                        CLINICAL);
            case LOST_WEIGHT_WITHOUT_TRYING ->
                stop(
                        question,
                        "Losing weight without trying can have a cause that should be found, so no plan is made. Please see a doctor"
                                + " first.",
                        CLINICAL);
            case DIABETES_MEDICINE, HARDLY_ATE -> Optional.empty();
        };
    }

    private static Optional<Caution> stop(HealthQuestion question, String text, Citation source) {
        return Optional.of(Caution.stop(question.key(), text, source));
    }

    private static Optional<Caution> notSaid(Eater eater) {
        Health health = eater.health();
        String open = Stream.of(HealthQuestion.values())
                .filter(question -> question.concerns(eater.body().sex()))
                .filter(question -> health.answer(question) == Answer.NOT_SAID)
                .map(HealthQuestion::words)
                .collect(Collectors.joining(", "));
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(Caution.warn(
                        "health_not_said",
                        "The profile does not say whether these apply: " + open
                                + ". If one does, see a doctor or dietitian before you follow this.",
                        CLINICAL));
    }
}

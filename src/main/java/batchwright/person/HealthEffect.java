package batchwright.person;

import java.util.Locale;

/** What a yes to a question of health changes besides its outcome: the words of the column "changes". */
public enum HealthEffect {
    /** No figures at all are shown. */
    HIDES_FIGURES,
    /** A loss is not planned before this question is answered. */
    LOSS_WAITS_FOR_ANSWER,
    /** One of five themes; two of them count as an eating disorder. */
    EATING_THEME,
    /** A small sign of risk at refeeding: weight lost. */
    REFEEDING_BY_LOSS,
    /** A small sign of risk at refeeding: medicine or alcohol, together one sign. */
    REFEEDING_BY_MEDICINE,
    /** No loss above 0.5 % of weight a week. */
    SLOW_LOSS,
    /** No target that leaves less than 130 g of carbohydrate. */
    CARBOHYDRATE_130_G,
    /** Protein floor of at least 1.2 g per kg of the weight that protein is counted by. */
    PROTEIN_1_2_G_PER_KG,
    /** Protein floor of at least 60 g. */
    PROTEIN_60_G,
    /** Fibre is not a rule, unless the profile asks for some. */
    NO_FIBRE_FLOOR,
    /** A caution when the average day of a plan holds more than 4700 mg of potassium. */
    POTASSIUM_4700_MG,
    /** The published amounts by sex and age do not apply to this body. */
    OTHER_AMOUNTS,
    /** Food that is kept has to be eaten sooner. */
    STRICT_FOOD_SAFETY,
    /** No plan unless wheat and gluten are avoided. */
    NO_GLUTEN;

    static HealthEffect of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}

package batchwright.person;

import java.math.BigDecimal;
import java.util.Set;

/**
 * Something people do, with what it costs. What counts as training goes by the headings of the Compendium (from memory): bicycling,
 * conditioning exercise, running, sports, water activities. That is a choice.
 *
 * @param id short name used in profiles, such as desk_work
 * @param code of the Compendium, five digits, the first two its heading
 * @param met cost as a multiple of rest, rest included: 1 MET is about 1 kcal per kg and hour
 * @param name in plain words
 */
public record ListedActivity(String id, String code, BigDecimal met, String name) {
    private static final Set<String> TRAINING = Set.of("01", "02", "12", "15", "18");
    private static final String WALKING = "17";
    private static final Set<String> STRENGTH = Set.of("02050", "02052", "02054", "02040", "02035", "02022");
    private static final int HEADING_DIGITS = 2;

    public boolean isTraining() {
        return TRAINING.contains(heading());
    }

    public boolean isWalking() {
        return heading().equals(WALKING);
    }

    /** Strength training: weights, circuits, push-ups and the like. */
    public boolean isStrength() {
        return STRENGTH.contains(code);
    }

    private String heading() {
        return code.substring(0, HEADING_DIGITS);
    }
}

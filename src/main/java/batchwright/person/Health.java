package batchwright.person;

/** Plain yes/no answers that decide whether this program may plan at all. "Not said" is its own answer. */
public record Health(
        Answer pregnantOrBreastfeeding, Answer eatingDisorder, Answer kidneyDisease, Answer diabetesMedicine) {
    /** An answer to a question of health. */
    public enum Answer {
        YES,
        NO,
        NOT_SAID
    }

    public static final Health NOT_SAID =
            new Health(Answer.NOT_SAID, Answer.NOT_SAID, Answer.NOT_SAID, Answer.NOT_SAID);
}

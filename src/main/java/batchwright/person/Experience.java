package batchwright.person;

/** How long the eater has trained with weights; the words of the papers that advise by it, which set no years. */
public enum Experience {
    NOVICE("novice"),
    INTERMEDIATE("intermediate"),
    ADVANCED("advanced");

    private final String label;

    Experience(String label) {
        this.label = label;
    }

    /** As files say it. */
    public String label() {
        return label;
    }
}

package batchwright.person;

/** How long the eater has trained with weights; the papers that advise by it set no years for the words. */
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

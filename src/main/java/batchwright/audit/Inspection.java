package batchwright.audit;

/** Looks at one rule, or at one kind of printed number. */
interface Inspection {
    /** Name shown to people; for a rule, the same as in clashes. */
    String name();

    void inspect(Evidence evidence, Findings findings);
}

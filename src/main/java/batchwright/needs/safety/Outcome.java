package batchwright.needs.safety;

/** What becomes of a goal, from mild to strict. */
public enum Outcome {
    PLAN,
    WARN,
    /** One more fact is needed. */
    ASK,
    REFUSE
}

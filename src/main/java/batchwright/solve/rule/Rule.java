package batchwright.solve.rule;

/** One family of constraints, named for people. */
public interface Rule {
    /** Name shown to people: in the audit, in clashes. */
    String name();

    void addTo(Draft draft);
}

package batchwright.solve.rule;

/** One family of constraints; the audit names it for people. */
public interface Rule {
    void addTo(Draft draft);
}

package batchwright.audit;

import java.util.List;

/** What the audit found, rule by rule. */
public record AuditReport(List<Check> checks) {
    public AuditReport {
        checks = List.copyOf(checks);
    }

    /**
     * One rule or claim, recomputed.
     *
     * @param rule name for people, the same as in clashes
     * @param detail what was found where it failed; empty when it passed
     */
    public record Check(String rule, boolean passed, String detail) {}

    public boolean passed() {
        return checks.stream().allMatch(Check::passed);
    }
}

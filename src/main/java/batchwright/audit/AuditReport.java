package batchwright.audit;

import java.util.List;
import java.util.stream.Collectors;

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

    /** What failed, in one line; empty when nothing did. */
    public String failures() {
        return checks.stream()
                .filter(check -> !check.passed())
                .map(check -> check.rule() + ": " + check.detail())
                .collect(Collectors.joining("; "));
    }

    public boolean passed() {
        return checks.stream().allMatch(Check::passed);
    }
}

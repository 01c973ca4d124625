package batchwright.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What the audit found, rule by rule.
 *
 * @param checks all of them
 * @param sessions those of each cooking session; empty when there is only one, to which all belong
 */
public record AuditReport(List<Check> checks, List<AuditReport> sessions) {
    public AuditReport {
        checks = List.copyOf(checks);
        sessions = List.copyOf(sessions);
    }

    /** Of one session. */
    public AuditReport(List<Check> checks) {
        this(checks, List.of());
    }

    /** What joins sessions, and then each session, its number before the names of its checks. */
    static AuditReport of(List<Check> joined, List<AuditReport> sessions) {
        List<Check> all = new ArrayList<>(joined);
        for (int s = 0; s < sessions.size(); s++) {
            for (Check check : sessions.get(s).checks()) {
                all.add(new Check("session " + (s + 1) + ": " + check.rule(), check.passed(), check.detail()));
            }
        }
        return new AuditReport(all, sessions);
    }

    /** Of one session, the first being 1. */
    public AuditReport session(int number) {
        return sessions.isEmpty() ? this : sessions.get(number - 1);
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

package batchwright.app;

import batchwright.audit.AuditReport;
import java.util.List;

/** Thrown instead of showing a plan that does not stand up to its audit: a fault of the program, not of the files. */
public final class FailedAudit extends RuntimeException {
    private final transient List<AuditReport.Check> failed;

    FailedAudit(AuditReport report) {
        super("audit");
        failed = report.checks().stream().filter(c -> !c.passed()).toList();
    }

    /** The checks that failed. */
    public List<AuditReport.Check> failed() {
        return failed;
    }
}

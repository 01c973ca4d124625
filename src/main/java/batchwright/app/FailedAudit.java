package batchwright.app;

import batchwright.audit.AuditReport;

/** Thrown instead of showing a plan that does not stand up to its audit: a fault of the program, not of the files. */
public final class FailedAudit extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String failures;

    FailedAudit(AuditReport report) {
        super("audit");
        failures = report.failures();
    }

    /** The checks that failed, in one line. */
    public String failures() {
        return failures;
    }
}

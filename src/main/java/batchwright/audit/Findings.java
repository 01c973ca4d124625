package batchwright.audit;

import java.util.ArrayList;
import java.util.List;

/** What one inspection found wrong, in sentences for people. */
final class Findings {
    /** Enough to see the pattern; the rest is counted. */
    private static final int MOST_SAID = 3;

    private final List<String> wrong = new ArrayList<>();

    void add(String sentence) {
        wrong.add(sentence);
    }

    AuditReport.Check asCheck(String rule) {
        return new AuditReport.Check(rule, wrong.isEmpty(), text());
    }

    private String text() {
        String said = String.join("; ", wrong.subList(0, Math.min(MOST_SAID, wrong.size())));
        int more = wrong.size() - MOST_SAID;
        return more > 0 ? said + "; and " + more + " more" : said;
    }
}

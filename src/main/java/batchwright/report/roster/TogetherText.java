package batchwright.report.roster;

import batchwright.answer.PlanAnswer;
import batchwright.answer.roster.TogetherAnswer;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** A few lines about a plan for all clients of a list. */
public final class TogetherText {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    private TogetherText() {}

    public static String of(TogetherAnswer answer) {
        return answer.answer()
                .map(found -> found.plan()
                        .map(plan -> of(found, plan, answer.clients().size()))
                        .orElse("No plan for all was found.\n"))
                .orElse("");
    }

    private static String of(PlanAnswer answer, Plan plan, int clients) {
        var text = new StringBuilder(clients + " clients, one shopping: "
                + answer.kitchen().currency().text(plan.cost()) + proven(answer.proof()) + "\n");
        for (Batch batch : plan.batches()) {
            text.append("  ")
                    .append(batch.dish().id())
                    .append(": ")
                    .append(batch.containers())
                    .append(" containers\n");
        }
        return text.toString();
    }

    private static String proven(Proof proof) {
        if (proof.provenCheapest()) {
            return ", proven cheapest";
        }
        return over(proof)
                .map(over -> ", at most " + over + " % above the cheapest there may be")
                .orElse(", how far from the cheapest is not known");
    }

    /** By how many per cent the cost is above what is proven; empty when nothing is. */
    static Optional<BigDecimal> over(Proof proof) {
        long bound = proof.lowerBound().minor();
        return bound == 0
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(proof.cost().minor() - bound)
                        .multiply(PER_CENT)
                        .divide(BigDecimal.valueOf(bound), 1, RoundingMode.CEILING));
    }
}

package batchwright.audit;

import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;

/** The cost of each line and of the whole is packs times the files' prices, and the proof speaks of that cost. */
record Cost() implements Inspection {
    @Override
    public String name() {
        return "cost";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Session session = evidence.session();
        if (session.shopping().stream()
                .anyMatch(p -> p.packs().values().stream().anyMatch(count -> count < 0))) {
            findings.add("less than no packs have no price");
            return;
        }
        for (Purchase purchase : session.shopping()) {
            compare(purchase.food().id(), purchase.cost(), evidence.costMinor(purchase), evidence, findings);
        }
        compare("the whole list", session.cost(), evidence.costMinor(), evidence, findings);
        compare("the proof's cost", session.proof().cost(), evidence.costMinor(), evidence, findings);
        if (session.proof().lowerBound().minor() > evidence.costMinor()) {
            findings.add("no plan is said to cost less than "
                    + evidence.text(session.proof().lowerBound()) + ", but this one costs "
                    + evidence.text(new Money(evidence.costMinor())));
        }
    }

    private static void compare(String what, Money stated, long minor, Evidence evidence, Findings findings) {
        if (stated.minor() != minor) {
            findings.add(
                    what + ": stated " + evidence.text(stated) + ", recomputed " + evidence.text(new Money(minor)));
        }
    }
}

package batchwright.audit;

import batchwright.quantity.Money;

/** The checkout cost at the files' prices stays within the budget. */
record Budget() implements Inspection {
    @Override
    public String name() {
        return "budget";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.request().budget().ifPresent(budget -> {
            long cost = evidence.costMinor();
            if (cost > budget.minor()) {
                findings.add("the shopping costs " + evidence.text(new Money(cost)) + ", the budget is "
                        + evidence.text(budget));
            }
        });
    }
}

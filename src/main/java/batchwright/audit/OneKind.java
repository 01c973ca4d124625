package batchwright.audit;

import batchwright.food.Pack;
import batchwright.plan.Purchase;

/** A food is bought by weight or in packs and pieces, never both ways on one list. */
record OneKind() implements Inspection {
    @Override
    public String name() {
        return "one kind";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        for (Purchase purchase : evidence.session().shopping()) {
            boolean byWeight = false;
            boolean inPacks = false;
            for (Pack named : purchase.packs().keySet()) {
                Pack pack = evidence.known().pack(named).orElse(named);
                byWeight |= pack.loose().isPresent();
                inPacks |= pack.loose().isEmpty();
            }
            if (byWeight && inPacks) {
                findings.add(purchase.food().id() + " is bought by weight and in packs at once");
            }
        }
    }
}

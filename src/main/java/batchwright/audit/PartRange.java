package batchwright.audit;

import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.util.List;

/** Each part of a container is in its range and in whole steps, and an optional part is left out or in it. */
record PartRange() implements Inspection {
    @Override
    public String name() {
        return "part range";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.fills((batch, fill) ->
                evidence.known().dish(batch.dish()).ifPresent(dish -> inspectFill(dish, batch, fill, findings)));
    }

    private static void inspectFill(Dish dish, Batch batch, Fill fill, Findings findings) {
        String where = batch.dish().id() + fill.forWhom();
        List<String> wanted = dish.parts().stream().map(Part::name).toList();
        List<String> given = fill.portions().stream().map(p -> p.part().name()).toList();
        if (!wanted.equals(given)) {
            findings.add(where + ": holds " + given + ", the dish has " + wanted);
            return;
        }
        for (int i = 0; i < wanted.size(); i++) {
            inspectPortion(where, dish.parts().get(i), fill.portions().get(i), findings);
        }
    }

    private static void inspectPortion(String where, Part part, Portion portion, Findings findings) {
        int raw = portion.rawGrams();
        if (raw == 0 && part.optional()) {
            return;
        }
        String what = where + ": " + raw + " g of " + part.name();
        if (raw < part.leastGrams() || raw > part.mostGrams()) {
            findings.add(what + ", the range is " + part.leastGrams() + " to " + part.mostGrams() + " g");
        }
        if (raw % part.stepGrams() != 0) {
            findings.add(what + " is no whole number of " + (part.pieces() ? "pieces of " : "steps of ")
                    + part.stepGrams() + " g");
        }
    }
}

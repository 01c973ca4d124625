package batchwright.audit;

import batchwright.food.Dish;
import batchwright.plan.Day;
import batchwright.plan.Seat;
import batchwright.plan.Serving;

/** A container waits in the fridge for the dish's fridge days; later it comes from the freezer, if the dish freezes. */
record Keeping() implements Inspection {
    @Override
    public String name() {
        return "keeping";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> day.servings()
                .forEach(serving -> evidence.known()
                        .dish(serving.dish())
                        .ifPresent(dish -> inspectServing(seat, day, serving, dish, findings))));
    }

    private static void inspectServing(Seat seat, Day day, Serving serving, Dish dish, Findings findings) {
        boolean fridge = serving.from() == Serving.Storage.FRIDGE;
        boolean inFridgeDays = day.day() <= dish.fridgeDays();
        String what = Say.day(seat, day) + ": " + dish.id();
        if (!inFridgeDays && !dish.freezes()) {
            findings.add(what + " keeps " + dish.fridgeDays() + " days and does not freeze");
        } else if (fridge && !inFridgeDays) {
            findings.add(what + " is from the fridge, where it keeps " + dish.fridgeDays() + " days");
        } else if (!fridge && inFridgeDays) {
            findings.add(what + " is from the freezer, but keeps in the fridge until day " + dish.fridgeDays());
        }
    }
}

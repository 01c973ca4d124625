package batchwright.audit;

import batchwright.food.Dish;
import batchwright.plan.Snack;
import java.util.ArrayList;
import java.util.List;

/** Every dish, part, measure, food and pack that the plan names stands in the files. */
record NamesInTheFiles() implements Inspection {
    @Override
    public String name() {
        return "names in the files";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Known known = evidence.known();
        evidence.fills((batch, fill) -> {
            dish(known, batch.dish(), findings);
            fill.portions().stream()
                    .filter(portion -> known.part(batch.dish(), portion.part()).isEmpty())
                    .forEach(p -> findings.add("there is no part " + p.part().name() + " of "
                            + batch.dish().id()));
        });
        evidence.days((seat, day) -> {
            day.servings().forEach(serving -> dish(known, serving.dish(), findings));
            List<Snack> snacks = new ArrayList<>(day.snacks());
            snacks.addAll(day.always());
            snacks.stream()
                    .filter(snack -> known.measure(snack.measure()).isEmpty())
                    .forEach(s -> findings.add("there is no measure "
                            + s.measure().name() + " of " + s.measure().food().id()));
        });
        evidence.session()
                .shopping()
                .forEach(purchase -> purchase.packs().keySet().stream()
                        .filter(pack -> known.pack(pack).isEmpty())
                        .forEach(pack ->
                                findings.add("no shop sells " + pack.food().id() + ", " + pack.label() + " of "
                                        + pack.grams().toPlainString() + " g")));
    }

    private static void dish(Known known, Dish dish, Findings findings) {
        if (known.dish(dish).isEmpty()) {
            findings.add("there is no dish " + dish.id());
        }
    }
}

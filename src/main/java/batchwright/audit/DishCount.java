package batchwright.audit;

import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Variety;
import batchwright.plan.left.LeftDish;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** No more and no fewer dishes than asked for, few of them of last time, each cooked once, each for at least two containers; those asked for among them. */
record DishCount() implements Inspection {
    @Override
    public String name() {
        return "dish count";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Set<String> dishes = new HashSet<>();
        for (Batch batch : evidence.session().batches()) {
            if (!dishes.add(batch.dish().id())) {
                findings.add(batch.dish().id() + " is cooked in two batches");
            }
            int containers = 0;
            for (Fill fill : batch.fills()) {
                containers += fill.containers();
            }
            int least = evidence.request().leastContainers(batch.dish());
            if (containers < least) {
                findings.add(batch.dish().id() + " fills " + containers + ", at least " + least
                        + " containers make a batch");
            }
        }
        evidence.request().mustCook().stream()
                .filter(dish -> !dishes.contains(dish.id()))
                .forEach(dish -> findings.add(dish.id() + " is asked for and not cooked"));
        Variety variety = evidence.request().variety();
        if (dishes.size() < variety.leastDishes()) {
            findings.add(dishes.size() + " dishes are cooked, at least " + variety.leastDishes());
        }
        long again = variety.lastTime().stream()
                .filter(dish -> dishes.contains(dish.id()))
                .count();
        if (again > Variety.MOST_AGAIN) {
            findings.add(again + " of last time's dishes are cooked again, at most " + Variety.MOST_AGAIN);
        }
        int most = evidence.request().mostDishes();
        if (dishes.size() > most) {
            findings.add(dishes.size() + " dishes are cooked, at most " + most);
        }
        inspectAnew(evidence, dishes, findings);
    }

    /** What is left from before is cooked already: it makes no room for another dish. */
    private static void inspectAnew(Evidence evidence, Set<String> dishes, Findings findings) {
        List<LeftDish> left = evidence.request().left().dishes();
        long fromBefore =
                left.stream().filter(each -> dishes.contains(each.dish().id())).count();
        long anew = dishes.size() - fromBefore;
        long most = (long) evidence.request().mostDishes() - left.size();
        if (anew > most) {
            findings.add(anew + " dishes are cooked anew, at most " + most);
        }
    }
}

package batchwright.audit;

import batchwright.plan.Batch;
import batchwright.plan.DishRequest;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.util.List;

/** As many containers of the dish as were asked for, all alike, for nobody in particular, with the parts that were asked for. */
record ContainersAsked(DishRequest asked) implements Inspection {
    @Override
    public String name() {
        return "containers asked for";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        List<Batch> batches = evidence.session().batches();
        if (batches.size() != 1 || batches.get(0).fills().size() != 1) {
            findings.add("not all containers are alike");
            return;
        }
        String dish = batches.get(0).dish().id();
        if (!dish.equals(asked.dish().id())) {
            findings.add("containers of " + dish + ", asked for " + asked.dish().id());
        }
        Fill fill = batches.get(0).fills().get(0);
        if (fill.containers() != asked.containers()) {
            findings.add(fill.containers() + " containers, asked for " + asked.containers());
        }
        if (fill.eater().isPresent() || !evidence.session().eaters().isEmpty()) {
            findings.add("they are for somebody, but nobody was named");
        }
        fill.portions().forEach(portion -> part(portion, findings));
    }

    private void part(Portion portion, Findings findings) {
        String name = portion.part().name();
        if (asked.with().contains(name) && portion.rawGrams() == 0) {
            findings.add(name + " is left out, but was asked for");
        }
        if (asked.without().contains(name) && portion.rawGrams() > 0) {
            findings.add(name + " is in, but was to be left out");
        }
    }
}

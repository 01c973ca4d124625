package batchwright.report.why;

import batchwright.answer.CostChange;
import batchwright.explain.KnownCost;
import batchwright.explain.cost.ItemCost;
import batchwright.explain.cost.NearMiss;
import batchwright.explain.cost.ProteinReach;
import batchwright.explain.cost.RuleCost;
import batchwright.explain.cost.Why;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Why a plan costs what it costs, for scripts. Costs are ranges: proven when both ends are alike, or when there is no plan. */
public final class WhyJson {
    private WhyJson() {}

    public static void put(ObjectNode node, Why why) {
        ArrayNode rules = node.putArray("rules");
        why.rules().forEach(rule -> rule(rules.addObject(), rule));
        Why.Protein p = why.protein();
        ObjectNode protein = node.putObject("protein");
        cost(protein.putObject("more").put("grams", p.grams()), p.more());
        reach(protein.putObject("for_more").put("money_minor", p.money().minor()), p.forMore());
        p.forLess()
                .ifPresent(less -> reach(
                        protein.putObject("for_less")
                                .put("money_minor", -p.money().minor()),
                        less));
        ArrayNode misses = node.putArray("just_missed");
        why.misses().forEach(miss -> miss(misses.addObject(), miss));
        node.put("just_missed_complete", why.missesComplete());
        ArrayNode items = node.putArray("items");
        why.items().forEach(item -> item(items.addObject(), item, why));
    }

    private static void rule(ObjectNode node, RuleCost rule) {
        node.put("rule", rule.rule());
        Json.text(node, "eater", rule.eater());
        node.put("now", rule.now());
        moved(node, "looser", rule.looser());
        moved(node, "tighter", rule.tighter());
    }

    private static void moved(ObjectNode node, String name, Optional<RuleCost.Moved> moved) {
        moved.ifPresentOrElse(m -> cost(node.putObject(name).put("to", m.to()), m.cost()), () -> node.putNull(name));
    }

    /** {@code cost_minor} of a plan that is known, {@code lower_bound_minor} of what none is below. */
    static void cost(ObjectNode node, KnownCost cost) {
        Json.money(node, "cost_minor", cost.most());
        Json.money(node, "lower_bound_minor", Optional.of(cost.least()).filter(c -> !cost.noPlan()));
        node.put("proven", cost.proven());
        node.put("no_plan", cost.noPlan());
    }

    /** Changes of every protein floor. */
    static void reach(ObjectNode node, ProteinReach reach) {
        whole(node, "protein_change_g", reach.atLeast());
        whole(node, "protein_change_at_most_g", reach.atMost());
        node.put("proven", reach.proven());
    }

    private static void whole(ObjectNode node, String name, Optional<Integer> grams) {
        grams.ifPresentOrElse(g -> node.put(name, g), () -> node.putNull(name));
    }

    private static void miss(ObjectNode node, NearMiss miss) {
        node.put("food", miss.pack().food().id())
                .put("pack_g", Json.tenth(miss.pack().grams()))
                .put("price_minor", miss.pack().price().minor())
                .put("enters_at_minor", miss.entersAt().minor())
                .put("proven", miss.proven());
    }

    private static void item(ObjectNode node, ItemCost item, Why why) {
        long cost = item.cost().minor();
        long all = why.items().stream().mapToLong(i -> i.cost().minor()).sum();
        node.put("food", item.food().id())
                .put("cost_minor", cost)
                .put("share_percent", CostChange.percent(cost, all))
                .put("energy_kcal", Json.tenth(item.kcal()));
        if (item.kcal().signum() > 0) {
            node.put(
                    "minor_per_1000_kcal",
                    BigDecimal.valueOf(cost * 1000).divide(item.kcal(), 1, RoundingMode.HALF_UP));
        } else {
            node.putNull("minor_per_1000_kcal");
        }
    }
}

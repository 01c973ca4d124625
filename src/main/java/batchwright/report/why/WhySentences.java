package batchwright.report.why;

import batchwright.answer.CostChange;
import batchwright.answer.PlanAnswer;
import batchwright.explain.cost.NearMiss;
import batchwright.explain.cost.RuleCost;
import batchwright.explain.cost.Why;
import batchwright.quantity.Currency;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;

/** Why a plan costs what it costs, in a sentence for each rule that costs something and each food that just missed. */
public final class WhySentences {
    private final Why why;
    private final PlanAnswer answer;

    public WhySentences(Why why, PlanAnswer answer) {
        this.why = why;
        this.answer = answer;
    }

    /** One for each rule that changes the cost when it is moved. */
    public List<String> rules() {
        if (why.rules().isEmpty()) {
            return List.of("The plan is not proven cheapest, so there is nothing to compare with.");
        }
        List<String> telling = why.rules().stream()
                .filter(rule -> !rule.changesNothing(why.cost()))
                .map(this::rule)
                .toList();
        return telling.isEmpty() ? List.of("No rule changes the cost when it is moved a little.") : telling;
    }

    private String rule(RuleCost rule) {
        String whose = answer.needs().size() > 1
                ? rule.eater().map(name -> " (" + name + ")").orElse("")
                : "";
        List<String> moves = new ArrayList<>();
        rule.looser()
                .map(moved -> moved.to() + ": " + saves(CostChange.saved(why.cost(), moved.cost())))
                .ifPresent(moves::add);
        rule.tighter()
                .map(moved -> moved.to() + ": " + costs(CostChange.added(why.cost(), moved.cost())))
                .ifPresent(moves::add);
        return Show.capital(rule.rule()) + whose + ", now " + rule.now() + ". With " + String.join("; with ", moves)
                + ".";
    }

    private String saves(CostChange change) {
        return change.isNothing() ? "the same cost" : sum(change.asSaving(currency()), "less");
    }

    private String costs(CostChange change) {
        if (change.noPlan()) {
            return "no plan";
        }
        return change.isNothing() ? "the same cost" : sum(change.asCost(currency()), "more");
    }

    private String sum(String shown, String direction) {
        return shown.equals("?")
                ? "not known in time"
                : shown.replace("<=", "at most ").replace(">=", "at least ") + " " + currency() + " " + direction;
    }

    /** One for each food that would be bought at a lower price. */
    public List<String> misses() {
        if (why.misses().isEmpty()) {
            return List.of(
                    why.missesComplete()
                            ? "No food that is not bought would be bought at half its price."
                            : "Not known: time ended first.");
        }
        List<String> all = new ArrayList<>(why.misses().stream().map(this::miss).toList());
        if (!why.missesComplete()) {
            all.add("Time ended before every food was looked at.");
        }
        return all;
    }

    private String miss(NearMiss miss) {
        return Show.capital(miss.pack().food().name()) + ": bought from "
                + Show.money(miss.entersAt(), currency()) + (miss.proven() ? "" : ", perhaps from more,")
                + " instead of "
                + Show.money(miss.pack().price(), currency()) + ".";
    }

    /** What a little more protein costs. */
    public String protein() {
        CostChange change = CostChange.added(why.cost(), why.protein().more());
        return why.protein().grams() + " g more protein a day: " + costs(change) + ".";
    }

    private Currency currency() {
        return answer.kitchen().currency();
    }
}

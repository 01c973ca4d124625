package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Clash;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Optional;

/** Why there is no plan, and what would make one possible, in sentences that a terminal and the report both show. */
public final class NoPlanWords {
    private final PlanAnswer answer;
    private final List<Clash> clashes;

    public NoPlanWords(PlanAnswer answer) {
        this.answer = answer;
        this.clashes = answer.clashes();
    }

    /** A plan was found, but it is too dear: how dear, and how little one could cost. */
    public Optional<String> overBudget() {
        Proof proof = answer.proof();
        Currency currency = answer.kitchen().currency();
        return answer.budget()
                .filter(budget -> proof.cost().minor() > 0)
                .map(budget -> "The cheapest plan found costs " + Show.money(proof.cost(), currency)
                        + ", more than the budget of " + Show.money(budget, currency) + "; no plan costs less than "
                        + Show.money(proof.lowerBound(), currency) + ".");
    }

    /** Above the rules that clash; of no meaning when none is known. */
    public String heading() {
        boolean one = clashes.size() == 1;
        String clash = one ? "This rule cannot hold" : "These rules cannot all hold";
        if (clashes.stream().allMatch(c -> c.cure().isEmpty())) {
            boolean kept = clashes.stream().anyMatch(c -> c.remedy().isPresent());
            return clash + (one || kept ? ":" : ", and changing one of them alone is not enough:");
        }
        if (noneCures()) {
            return clash + ", and no change of one rule that makes a plan possible was found in time:";
        }
        return clash + "; " + (one ? "a change" : "changing one of them") + " as shown makes a plan possible:";
    }

    /** The rules to name one by one. */
    public List<Clash> clashes() {
        return clashes.stream().filter(c -> c.needed() || !someNeeded()).toList();
    }

    /** What is said below a rule; empty when nothing is to be said. */
    public Optional<String> cure(Clash clash) {
        if (!clash.cure().isEmpty()) {
            return Optional.of("Cure: " + clash.cure() + ".");
        }
        return noneCures() || clash.remedy().isPresent()
                ? Optional.empty()
                : Optional.of("Changing this rule alone is not enough.");
    }

    /** Rules of which nobody knows whether they are part of the clash. */
    public Optional<String> perhaps() {
        List<String> perhaps = clashes.stream()
                .filter(c -> !c.needed() && someNeeded())
                .map(Clash::says)
                .toList();
        return perhaps.isEmpty()
                ? Optional.empty()
                : Optional.of("Perhaps also, not known in time: " + String.join("; ", perhaps) + ".");
    }

    /** A note that too many rules may be named, if so. */
    public Optional<String> doubt() {
        return someNeeded()
                ? Optional.empty()
                : Optional.of("Time ended before it was known which of these rules clash: perhaps not all of them.");
    }

    /** Which of several cooking sessions has no plan, if that is why there is none. */
    public Optional<String> stuck() {
        return answer.stuck()
                .map(days -> (days.first() == 1
                                ? "It is the session for days "
                                : "After the sessions before it, it is the one for days ")
                        + days.first() + "-" + days.last() + " that has no plan."
                        + (days.first() == 1 ? "" : " Try other --cooks, or without --vary."));
    }

    private boolean someNeeded() {
        return clashes.stream().anyMatch(Clash::needed);
    }

    private boolean noneCures() {
        return clashes.stream().noneMatch(Clash::isCured);
    }
}

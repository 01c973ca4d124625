package batchwright.report.why;

import batchwright.answer.PlanAnswer;
import batchwright.explain.cost.ProteinReach;
import batchwright.food.Nutrient;
import batchwright.report.print.Show;
import java.util.Optional;

/** Changes of protein floors in words: as the floor of a single eater, as a change for several. */
final class ProteinWords {
    private final Optional<Integer> floor;

    ProteinWords(PlanAnswer answer) {
        this.floor = answer.needs().size() == 1
                ? answer.needs()
                        .get(0)
                        .target()
                        .map(t -> t.day(Nutrient.PROTEIN).least())
                : Optional.empty();
    }

    /** 130, or +10 where several eat. */
    String level(int change) {
        return floor.map(g -> Integer.toString(g + change)).orElse(Show.signed(change));
    }

    /** Most protein, as far as known. */
    String most(ProteinReach reach) {
        return (reach.proven() ? "" : ">=") + reach.atLeast().map(this::level).orElse("");
    }

    /** What a sum of money buys. */
    String buys(ProteinReach reach) {
        if (reach.atMost().isEmpty()) {
            return "no plan, however low the protein floor";
        }
        if (reach.atLeast().isEmpty()) {
            return "not known in time whether there is a plan";
        }
        int grams = reach.atLeast().get();
        String upTo = floor.map(g -> "up to " + (g + grams) + " g of protein a day")
                .orElse("every protein floor " + Show.signed(grams) + " g");
        String now = floor.map(g -> grams < 0 ? ", less than the " + g + " g asked for" : "")
                .orElse("");
        String open = reach.highest() && reach.proven() ? ", and perhaps more" : "";
        return upTo + now + (reach.proven() ? open : "; more may be possible, time ended first");
    }
}

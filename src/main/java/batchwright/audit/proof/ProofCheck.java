package batchwright.audit.proof;

import batchwright.audit.proof.PlanProof.Leaf;
import batchwright.audit.proof.PlanProof.Part;
import batchwright.audit.proof.PlanProof.Split;
import batchwright.audit.proof.PlanProof.Tree;
import batchwright.audit.proof.ProofModel.Variable;
import batchwright.plan.PlanRequest;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Checks a proof against what was asked, in exact arithmetic: that its parts hold every set of dishes that may be cooked, that the splits
 * of each part leave nothing out, and that the multipliers of each leaf prove the bound for the rows that are built here anew. It believes
 * nothing that the proof says but these choices.
 */
public final class ProofCheck {
    /** Of multipliers: a file must not make a sum take forever. */
    private static final int MOST_DIGITS = 60;

    private static final int MOST_DEPTH = 400;

    private final PlanRequest request;
    private long leaves;

    private ProofCheck(PlanRequest request) {
        this.request = request;
    }

    /**
     * What came of it.
     *
     * @param wrong why the proof does not hold; empty when it does
     * @param boundMinor what is proven, never more than what is claimed; 0 when the proof does not hold
     * @param leaves how many sums were added up
     */
    public record Verdict(Optional<String> wrong, long boundMinor, int parts, long leaves) {
        public boolean holds() {
            return wrong.isEmpty();
        }
    }

    /** A fault in a proof. */
    private static final class DoesNotHold extends RuntimeException {
        private static final long serialVersionUID = 1;

        DoesNotHold(String why) {
            super(why);
        }
    }

    /** @param request of one cooking session; its budget is of no matter */
    public static Verdict of(PlanRequest request, PlanProof proof) {
        if (request.cooking().sessions() > 1) {
            throw new IllegalArgumentException(
                    "cooking.sessions (" + request.cooking().sessions() + ") must be 1.");
        }
        var check = new ProofCheck(request);
        try {
            check.check(proof);
            return new Verdict(
                    Optional.empty(), proof.boundMinor(), proof.parts().size(), check.leaves);
        } catch (DoesNotHold fault) {
            return new Verdict(
                    Optional.of(String.valueOf(fault.getMessage())),
                    0,
                    proof.parts().size(),
                    check.leaves);
        }
    }

    private void check(PlanProof proof) {
        Set<String> known = TotalsOfDishes.dishes(request);
        for (Part part : proof.parts()) {
            if (!known.containsAll(part.among()) || !part.among().containsAll(part.with())) {
                throw new DoesNotHold(says(part) + " is about dishes that nobody is offered");
            }
        }
        new DishSetCover(request).missing(proof.parts()).ifPresent(set -> {
            throw new DoesNotHold("no part holds the dishes " + String.join(", ", new TreeSet<>(set)));
        });
        for (Part part : proof.parts()) {
            ProofModel model = TotalsOfDishes.of(request, part.with(), part.among());
            long[] least = model.columns().stream().mapToLong(Variable::least).toArray();
            long[] most = model.columns().stream().mapToLong(Variable::most).toArray();
            checkPiece(part, part.tree(), model, least, most, proof.boundMinor(), 0);
        }
    }

    private static String says(Part part) {
        return "the part with " + String.join(", ", part.with()) + " among " + String.join(", ", part.among());
    }

    private void check(Part part, Tree tree, ProofModel model, long[] least, long[] most, long bound, int depth) {
        if (depth > MOST_DEPTH) {
            throw new DoesNotHold(says(part) + " is split more than " + MOST_DEPTH + " times");
        }
        if (tree instanceof Leaf leaf) {
            leaves++;
            BigInteger proven = model.bound(checked(part, leaf, model), least, most);
            if (proven.compareTo(BigInteger.valueOf(bound)) < 0) {
                throw new DoesNotHold(says(part) + " is proven to cost " + proven + ", claimed " + bound);
            }
        } else if (tree instanceof Split split) {
            int j = model.column(split.column());
            if (j < 0 || !model.columns().get(j).whole()) {
                throw new DoesNotHold(says(part) + " is split at " + split.column() + ", which is not counted");
            }
            long[] lower = most.clone();
            lower[j] = Math.min(most[j], split.at());
            long[] higher = least.clone();
            higher[j] = Math.max(least[j], Math.addExact(split.at(), 1));
            checkPiece(part, split.low(), model, least.clone(), lower, bound, depth + 1);
            checkPiece(part, split.high(), model, higher, most.clone(), bound, depth + 1);
        }
    }

    /** Where no point is left there is nothing to prove. */
    private void checkPiece(Part part, Tree tree, ProofModel model, long[] least, long[] most, long bound, int depth) {
        if (model.narrow(least, most)) {
            check(part, tree, model, least, most, bound, depth);
        }
    }

    private static Map<String, BigDecimal> checked(Part part, Leaf leaf, ProofModel model) {
        leaf.multipliers().forEach((name, multiplier) -> {
            if (model.row(name) < 0) {
                throw new DoesNotHold(says(part) + " names a row " + name + ", which there is not");
            }
            if (multiplier.signum() < 0
                    || multiplier.precision() > MOST_DIGITS
                    || Math.abs((long) multiplier.scale()) > MOST_DIGITS) {
                throw new DoesNotHold(says(part) + " has a multiplier that is below 0 or has too many digits");
            }
        });
        return leaf.multipliers();
    }
}

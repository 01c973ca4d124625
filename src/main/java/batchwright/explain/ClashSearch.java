package batchwright.explain;

import batchwright.plan.Clash;
import batchwright.plan.ClashSet;
import batchwright.plan.Clashes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import batchwright.plan.Remedy;
import batchwright.plan.Seat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Why one request has no plan, whatever it may cost, and what cures that. Sets of rules are looked for one after another, each with
 * those before it dropped, until a plan is possible: so no rule is in two of them, and of each one has to change.
 */
final class ClashSearch {
    private static final int MOST_SETS = 3;

    private static final Clash NO_RULE = new Clash(
            "part range",
            "whatever the targets, the dishes make no plan with their parts within their ranges and with the foods that"
                    + " are at home or sold",
            "",
            Optional.of(new Remedy.ChangeDishesOrPacks()));

    private final PlanRequest request;
    private final PlanRequest atAnyCost;
    private final Oracle oracle;
    private final CuresAlone alone;

    ClashSearch(PlanRequest request, Oracle oracle) {
        this.request = request;
        this.atAnyCost = request.withBudget(Optional.empty());
        this.oracle = oracle;
        this.alone = new CuresAlone(request, oracle, Cure::atAnyCost);
    }

    Clashes clashes() {
        List<PlainCauses.Cause> plain = new PlainCauses(request).all();
        if (!plain.isEmpty()) {
            return plain(plain);
        }
        Optional<Clash> tooLong = tooLong();
        if (tooLong.isPresent()) {
            return Clashes.of(List.of(tooLong.get()));
        }
        var sets = new Sets(atAnyCost, oracle.shareOf(2));
        sets.find();
        if (sets.found.isEmpty()) {
            return Clashes.of(List.of(NO_RULE));
        }
        return sets.found.size() == 1 ? one(sets) : several(sets, List.of());
    }

    /** A plan that only takes more time is named alone: how much more is what a cook wants to know. */
    private Optional<Clash> tooLong() {
        return Stream.of(SoftCooking.handsOnMinutes(request), SoftCooking.doneWithin(request))
                .flatMap(Optional::stream)
                .filter(rule -> oracle.shareOf(2).ask(rule.dropped().apply(request)) == Possible.YES)
                .findFirst()
                .map(rule -> Cure.atAnyCost(rule, request, oracle).clash(true));
    }

    /** What counting alone shows. Where curing it is not enough, the rest is looked for with it cured. */
    private Clashes plain(List<PlainCauses.Cause> causes) {
        List<ClashSet> sets = new ArrayList<>();
        for (PlainCauses.Cause cause : causes) {
            Clash clash = cause.clash(Cure.atAnyCost(cause.softRule(), request, oracle.shareOf(2)));
            sets.add(new ClashSet(List.of(clash), names(List.of(cause.at().seat()))));
        }
        List<SoftRule> rules = causes.stream().map(PlainCauses.Cause::softRule).toList();
        boolean cured = sets.stream().flatMap(set -> set.rules().stream()).anyMatch(Clash::isCured);
        if (cured || !rules.stream().allMatch(SoftRule::canBeChanged)) {
            return new Clashes(sets, List.of());
        }
        PlanRequest eased = atAnyCost;
        for (SoftRule rule : rules) {
            Loosening first = rule.ways().get(0);
            eased = first.loosen().by(eased, first.reach());
        }
        var others = new Sets(eased, oracle.shareOf(2));
        if (new PlainCauses(eased).all().isEmpty() && oracle.ask(eased) == Possible.NO) {
            others.find();
        }
        Clashes all = several(others, rules);
        sets.addAll(all.sets());
        return new Clashes(sets, all.together());
    }

    /** Each rule tells its own cure; where none has one, changes of several. */
    private Clashes one(Sets sets) {
        List<Cure> cures = alone.of(sets.found.get(0));
        List<Clash> rules = cures.stream()
                .map(cure -> cure.clash(
                        sets.isNeeded(cure.softRule()) || cure.found().isPresent()))
                .toList();
        boolean cured = rules.stream().anyMatch(Clash::isCured);
        return new Clashes(
                List.of(new ClashSet(rules, sets.eaters.get(0))),
                cured ? List.of() : together(sets.found, alone.otherContainers(2)));
    }

    /** For a request without a plan at any cost: one for each rule of the first set. Empty when no rule that can be loosened is to blame. */
    List<Cure> cures() {
        var sets = new Sets(atAnyCost, oracle.shareOf(2));
        sets.find();
        return sets.found.isEmpty() ? List.of() : alone.of(sets.found.get(0));
    }

    /** For a request without a plan at any cost: the sets of rules that clash. */
    List<List<SoftRule>> sets() {
        var sets = new Sets(atAnyCost, oracle.shareOf(2));
        sets.find();
        return sets.found;
    }

    /** For a request without a plan at any cost: what cures these sets together. */
    List<List<Cure>> curesTogether(List<List<SoftRule>> sets) {
        return new CuresTogether(atAnyCost, oracle).fewest(sets, alone.otherContainers(2));
    }

    /** No change of one rule is enough, unless it is of the containers a day. */
    private Clashes several(Sets sets, List<SoftRule> figures) {
        List<ClashSet> named = new ArrayList<>();
        for (int i = 0; i < sets.found.size(); i++) {
            List<Clash> rules = sets.found.get(i).stream()
                    .map(rule -> Cure.none(rule).clash(sets.isNeeded(rule)))
                    .toList();
            named.add(new ClashSet(rules, sets.eaters.get(i)));
        }
        List<SoftRule> all = new ArrayList<>(figures);
        if (figures.isEmpty()) {
            List<SoftRule> containers = alone.otherContainers(2);
            List<Cure> helping = alone.helping(containers);
            if (!helping.isEmpty()) {
                return new Clashes(
                        named,
                        helping.stream().map(cure -> List.of(cure.clash(true))).toList());
            }
            all.addAll(containers);
        }
        return new Clashes(named, together(sets.found, all));
    }

    private List<List<Clash>> together(List<List<SoftRule>> sets, List<SoftRule> figures) {
        return new CuresTogether(atAnyCost, oracle)
                .fewest(sets, figures).stream().map(this::withinBudget).toList();
    }

    /** With the budget raised besides, if it has to be. */
    private List<Clash> withinBudget(List<Cure> cures) {
        List<Clash> clashes =
                new ArrayList<>(cures.stream().map(cure -> cure.clash(true)).toList());
        PlanRequest changed = request;
        for (Cure cure : cures) {
            changed = cure.applied(changed);
        }
        if (request.budget().isPresent() && oracle.ask(changed) != Possible.YES) {
            var raised = new Raised(oracle.cost(changed), request.kitchen().currency());
            clashes.add(raised.clash(request.budget().get()));
        }
        return clashes;
    }

    private List<String> names(List<Seat> seats) {
        return request.seats().size() == 1
                ? List.of()
                : seats.stream().map(seat -> seat.eater().name()).toList();
    }

    /** Sets of rules that clash, with those for whom they do. */
    private final class Sets {
        private final PlanRequest clashing;
        private final Oracle share;
        private final SoftRules softRules;
        private final List<List<SoftRule>> found = new ArrayList<>();
        private final List<List<String>> eaters = new ArrayList<>();
        private final List<SoftRule> perhaps = new ArrayList<>();

        Sets(PlanRequest clashing, Oracle share) {
            this.clashing = clashing;
            this.share = share;
            this.softRules = SoftRules.of(clashing);
        }

        /** @see Conflict#isNeeded */
        boolean isNeeded(SoftRule rule) {
            return !perhaps.contains(rule);
        }

        /** Only the first may hold rules that are perhaps not part of it. */
        void find() {
            List<SoftRule> left = softRules.all();
            boolean none = true;
            while (none && found.size() < MOST_SETS) {
                var conflict = new Conflict(clashing, softRules, share);
                List<SoftRule> set = conflict.smallest(left);
                if (set.isEmpty()) {
                    return;
                }
                List<SoftRule> unsure =
                        set.stream().filter(rule -> !conflict.isNeeded(rule)).toList();
                if (!found.isEmpty() && !unsure.isEmpty()) {
                    return;
                }
                found.add(set);
                perhaps.addAll(unsure);
                eaters.add(names(forWhom(softRules.holding(clashing, set))));
                left = left.stream().filter(rule -> !set.contains(rule)).toList();
                none = share.shareOf(2).ask(softRules.holding(clashing, left)) == Possible.NO;
            }
        }

        /** As few as will do. */
        private List<Seat> forWhom(PlanRequest held) {
            List<Seat> seats = held.seats();
            for (Seat seat : held.seats()) {
                List<Seat> others = seats.stream().filter(s -> !s.equals(seat)).toList();
                if (!others.isEmpty() && share.shareOf(2).ask(held.withSeats(others)) == Possible.NO) {
                    seats = others;
                }
            }
            return seats;
        }
    }
}

package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Clash;
import batchwright.plan.ClashSet;
import batchwright.plan.Clashes;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.report.print.RemedyText;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why there is no plan, and what would make one possible, in sentences that a terminal and the report both show. */
public final class NoPlanWords {
    private final PlanAnswer answer;
    private final Clashes clashes;

    public NoPlanWords(PlanAnswer answer) {
        this.answer = answer;
        this.clashes = answer.clashes();
    }

    /**
     * One line of a list.
     *
     * @param rule its name; empty where the line is of several
     * @param says in whole sentences
     * @param cure the smallest change of the rule alone, or that there is none; empty when nothing is to be said
     * @param remedy what to do; empty when nothing is known
     */
    public record Line(String rule, String says, Optional<String> cure, Optional<ToDo> remedy) {}

    /**
     * An option or a line of a file.
     *
     * @param before "Try:" if it was found to lead to a plan, else "Perhaps:"
     */
    public record ToDo(String before, String says) {
        String text() {
            return before + " " + says;
        }
    }

    /** Lines below a heading. */
    public record Section(String heading, List<Line> lines) {}

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

    /** Each set of rules that clash, then what cures them together. None when no clash is known. */
    public List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        clashes.sets().forEach(set -> sections.add(new Section(heading(set), lines(set))));
        if (!clashes.together().isEmpty()) {
            sections.add(new Section(
                    clashes.together().size() > 1
                            ? "Each of these makes a plan possible:"
                            : byOneChange()
                                    ? "This change makes a plan possible:"
                                    : "These changes together make a plan possible:",
                    clashes.together().stream().map(this::together).toList()));
        }
        return sections;
    }

    /** Where another rule than those of the sets is enough. */
    private boolean byOneChange() {
        return clashes.together().stream().anyMatch(changes -> changes.size() == 1);
    }

    private String heading(ClashSet set) {
        boolean one = set.rules().size() == 1;
        String clash = (one ? "This rule cannot hold" : "These rules cannot all hold") + forWhom(set);
        if (clashes.sets().size() > 1) {
            return clash + ":";
        }
        if (set.rules().stream().allMatch(c -> c.cure().isEmpty())) {
            boolean kept = set.rules().stream().anyMatch(c -> c.remedy().isPresent());
            return clash + (one || kept ? ":" : ", and changing one of them alone is not enough:");
        }
        if (noneCures(set)) {
            return clash + ", and no change of one rule that makes a plan possible was found" + inTime() + ":";
        }
        return clash + "; " + (one ? "a change" : "changing one of them") + " as shown makes a plan possible:";
    }

    private static String forWhom(ClashSet set) {
        List<String> eaters = set.eaters();
        int last = eaters.size() - 1;
        return switch (eaters.size()) {
            case 0 -> "";
            case 1 -> " for " + eaters.get(0);
            default -> " for " + String.join(", ", eaters.subList(0, last)) + " and " + eaters.get(last) + " together";
        };
    }

    private String inTime() {
        return clashes.timeEnded() ? " in time" : "";
    }

    /** Of rules of which nobody knows whether they are part of the clash, all together are one line. */
    private List<Line> lines(ClashSet set) {
        boolean someNeeded = set.rules().stream().anyMatch(Clash::needed);
        List<Line> lines = new ArrayList<>();
        set.rules().stream()
                .filter(c -> c.needed() || !someNeeded)
                .map(c -> new Line(Show.capital(c.rule()), c.says() + ".", cure(set, c), remedy(c)))
                .forEach(lines::add);
        String perhaps = set.rules().stream()
                .filter(c -> !c.needed() && someNeeded)
                .map(Clash::says)
                .collect(Collectors.joining("; "));
        if (!perhaps.isEmpty()) {
            lines.add(new Line(
                    "",
                    "Perhaps also, not known" + inTime() + ": " + perhaps + ".",
                    Optional.empty(),
                    Optional.empty()));
        }
        return lines;
    }

    private Optional<String> cure(ClashSet set, Clash clash) {
        if (!clash.cure().isEmpty()) {
            return Optional.of("Cure: " + clash.cure() + ".");
        }
        boolean alone =
                clashes.sets().size() == 1 && !noneCures(set) && clash.remedy().isEmpty();
        return alone ? Optional.of("Changing this rule alone is not enough.") : Optional.empty();
    }

    private static Optional<ToDo> remedy(Clash clash) {
        return clash.remedy().map(r -> new ToDo(clash.isCured() ? "Try:" : "Perhaps:", RemedyText.of(r)));
    }

    /** Of several eaters, each rule is told with whose it is. */
    private Line together(List<Clash> changes) {
        boolean several = answer.needs().size() > 1;
        String says = changes.stream()
                .map(c -> Show.capital(c.rule()) + (several ? " (" + c.says() + ")" : "") + ": " + c.cure())
                .collect(Collectors.joining("; and "));
        String remedies = changes.stream()
                .flatMap(c -> c.remedy().stream())
                .map(RemedyText::of)
                .collect(Collectors.joining("; and "));
        return new Line("", says + ".", Optional.empty(), Optional.of(new ToDo("Try:", remedies)));
    }

    /** What is said below all sections. */
    public List<String> below() {
        List<String> below = new ArrayList<>();
        if (clashes.sets().size() > 1 && !byOneChange()) {
            below.add("A rule of each of these sets has to change"
                    + (clashes.together().isEmpty()
                            ? "; no changes that are enough were found" + inTime() + "."
                            : ": no change of one rule alone is enough."));
        }
        if (clashes.all().stream().noneMatch(Clash::needed) && !clashes.isEmpty()) {
            below.add((clashes.timeEnded() ? "Time ended" : "The search was given up")
                    + " before it was known which of these rules clash: perhaps not all of them.");
        }
        return below;
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

    private static boolean noneCures(ClashSet set) {
        return set.rules().stream().noneMatch(Clash::isCured);
    }
}

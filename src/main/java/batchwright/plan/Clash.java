package batchwright.plan;

/**
 * One of a smallest set of rules that cannot all hold.
 *
 * @param rule the rule's name, as in the audit
 * @param says the rule in the words of the user's files, with its figure
 * @param cure the smallest change of this rule alone that makes a plan possible; empty when it alone cannot
 * @param tryThis a command or an edit to try; empty when there is none
 */
public record Clash(String rule, String says, String cure, String tryThis) {}

package batchwright.needs.target;

import batchwright.needs.evidence.Citation;

/**
 * One line of the target with its reason.
 *
 * @param name such as protein
 * @param says the figure in words, such as at least 133 g
 */
public record TargetLine(String name, String says, Citation source) {}

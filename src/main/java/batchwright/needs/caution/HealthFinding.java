package batchwright.needs.caution;

import batchwright.person.Outcome;

/**
 * What the answers to questions of health come to, for one goal.
 *
 * @param outcome at least a warning
 * @param caution what is said of it
 */
public record HealthFinding(Outcome outcome, Caution caution) {}

/**
 * The rules of a plan, one class each. A rule speaks of containers, grams, snacks and packs through a {@link
 * batchwright.solve.rule.Draft}, so that the same class serves the model of the totals and the model of the single days.
 */
@NullMarked
package batchwright.solve.rule;

import org.jspecify.annotations.NullMarked;

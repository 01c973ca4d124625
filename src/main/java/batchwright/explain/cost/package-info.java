/** What each rule and each purchase of a plan costs, and what more or less of a target would cost. */
@NullMarked
package batchwright.explain.cost;

import org.jspecify.annotations.NullMarked;

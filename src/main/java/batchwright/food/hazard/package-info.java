/** What can do harm in food: {@code hazards.csv}, each rule with its source, and mercury in fish. Says nothing to anybody. */
@NullMarked
package batchwright.food.hazard;

import org.jspecify.annotations.NullMarked;

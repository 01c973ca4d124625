/**
 * What is known of an eater: body, activity, goal, wishes; and the target that a day of theirs must hold.
 */
@NullMarked
package batchwright.person;

import org.jspecify.annotations.NullMarked;

/**
 * An eater: body, activity, health, goal, wishes.
 */
@NullMarked
package batchwright.files.profile;

import org.jspecify.annotations.NullMarked;

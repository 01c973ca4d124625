/** A list of many clients, and what each is answered. */
@NullMarked
package batchwright.answer.roster;

import org.jspecify.annotations.NullMarked;

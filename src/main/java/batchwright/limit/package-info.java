/** What binds whom, as values: whoever plans, checks, explains or prints goes through the list. */
@NullMarked
package batchwright.limit;

import org.jspecify.annotations.NullMarked;

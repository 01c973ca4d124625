/**
 * A dish of one's own from what goes into a batch: amounts and foods as a cook types them; parts, yields, keeping and steps are proposed. Knows no
 * door: a command and a page ask the same.
 */
@NullMarked
package batchwright.app.newdish;

import org.jspecify.annotations.NullMarked;

/**
 * A food of USDA SR28 as lines for the user's own tables: the source's values unchanged, and a proposal, to be checked by the user,
 * for every cell that the source does not have.
 */
@NullMarked
package batchwright.reference.take;

import org.jspecify.annotations.NullMarked;

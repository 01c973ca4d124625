/**
 * Source files as people wrote them: lines, places, problems with the user's own line and a caret, nearest names. Knows no food.
 */
@NullMarked
package batchwright.text;

import org.jspecify.annotations.NullMarked;

/**
 * What was found, in words of the kitchen and as data: it knows no option, no command and no page.
 */
@NullMarked
package batchwright.answer;

import org.jspecify.annotations.NullMarked;

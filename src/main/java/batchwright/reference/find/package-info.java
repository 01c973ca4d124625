/** Foods found by the words that cooks type, best first: those of a catalogue and those of USDA SR28 in one ranking. */
@NullMarked
package batchwright.reference.find;

import org.jspecify.annotations.NullMarked;

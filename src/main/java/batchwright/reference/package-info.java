/**
 * The reference table that travels with the program: the foods of USDA SR28, to be searched and taken over into a catalogue.
 * Its lines are only read as far as a question needs.
 */
@NullMarked
package batchwright.reference;

import org.jspecify.annotations.NullMarked;

/**
 * What weighings and recorded intake say of one person's expenditure. Takes plain values, days with their weight and food; knows no
 * file and no book.
 */
@NullMarked
package batchwright.needs.weighing;

import org.jspecify.annotations.NullMarked;

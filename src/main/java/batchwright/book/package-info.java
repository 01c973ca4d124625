/**
 * What happened in a kitchen, a line for each event, and what follows from it: what is at home, what was eaten. Foods, dishes and
 * eaters go by their short names, so that the book can be read after one of them was renamed.
 */
@NullMarked
package batchwright.book;

import org.jspecify.annotations.NullMarked;

/** profiles/book.txt: what happened in the kitchen, a line for each event. */
@NullMarked
package batchwright.files.book;

import org.jspecify.annotations.NullMarked;

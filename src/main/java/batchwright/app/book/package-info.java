/** Use cases of the book: writing what happened, the day's work, what is at home, keeping a plan. */
@NullMarked
package batchwright.app.book;

import org.jspecify.annotations.NullMarked;

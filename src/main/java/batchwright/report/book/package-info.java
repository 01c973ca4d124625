/** The book, what is at home by it, and the day's work. */
@NullMarked
package batchwright.report.book;

import org.jspecify.annotations.NullMarked;

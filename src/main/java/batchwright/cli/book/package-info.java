/** Commands and options of the book and of what follows from it. */
@NullMarked
package batchwright.cli.book;

import org.jspecify.annotations.NullMarked;

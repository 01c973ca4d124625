/**
 * How every file the program makes comes to the disk: whole or not at all, and never over a file that somebody else made. Knows
 * nothing of what the files hold.
 */
@NullMarked
package batchwright.write;

import org.jspecify.annotations.NullMarked;

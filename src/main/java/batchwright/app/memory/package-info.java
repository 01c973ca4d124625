/** What was read stays in memory until a file changes: for a door that answers often. */
@NullMarked
package batchwright.app.memory;

import org.jspecify.annotations.NullMarked;

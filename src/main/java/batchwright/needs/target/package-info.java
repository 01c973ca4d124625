/** What a day must hold. */
@NullMarked
package batchwright.needs.target;

import org.jspecify.annotations.NullMarked;

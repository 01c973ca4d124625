/** What could harm somebody, and who should be asked instead. */
@NullMarked
package batchwright.needs.caution;

import org.jspecify.annotations.NullMarked;

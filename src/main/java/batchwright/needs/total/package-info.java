/** Total energy a day: how sure a PAL and a total are, and published equations that need no resting energy. */
@NullMarked
package batchwright.needs.total;

import org.jspecify.annotations.NullMarked;

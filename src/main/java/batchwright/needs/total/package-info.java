/** Total energy a day. */
@NullMarked
package batchwright.needs.total;

import org.jspecify.annotations.NullMarked;

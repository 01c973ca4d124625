/** Body fat when nobody measured it, each estimate with its error. */
@NullMarked
package batchwright.needs.bodyfat;

import org.jspecify.annotations.NullMarked;

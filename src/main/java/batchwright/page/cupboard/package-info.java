/** Before the cupboard: what is at home, what things cost, labels, dishes and equipment of one's own. */
@NullMarked
package batchwright.page.cupboard;

import org.jspecify.annotations.NullMarked;

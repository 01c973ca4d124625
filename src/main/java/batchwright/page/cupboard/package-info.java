/** Before the cupboard: what is at home, and what things cost. */
@NullMarked
package batchwright.page.cupboard;

import org.jspecify.annotations.NullMarked;

/** Before the fridge: today, containers, what was eaten and weighed. */
@NullMarked
package batchwright.page.fridge;

import org.jspecify.annotations.NullMarked;

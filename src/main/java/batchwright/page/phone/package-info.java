/** The phone on the same network: off until it is switched on here; who is paired, and the end of it. */
@NullMarked
package batchwright.page.phone;

import org.jspecify.annotations.NullMarked;

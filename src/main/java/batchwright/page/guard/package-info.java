/** Who is let in: by which address, with which key, how often, and what a browser may do with what it gets. */
@NullMarked
package batchwright.page.guard;

import org.jspecify.annotations.NullMarked;

/** The plan on one page: what is asked, a search that runs behind it, and what it came to. */
@NullMarked
package batchwright.page.desk;

import org.jspecify.annotations.NullMarked;

/** In the shop: a list that is ticked, other packs and prices, and what to do when something is not there. */
@NullMarked
package batchwright.page.shop;

import org.jspecify.annotations.NullMarked;

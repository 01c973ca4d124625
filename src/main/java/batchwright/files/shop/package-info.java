/**
 * Prices and packs of the shop, and what is at home.
 */
@NullMarked
package batchwright.files.shop;

import org.jspecify.annotations.NullMarked;

/**
 * A proof that no plan costs less than some sum, and what checks it: the totals of each set of dishes as rows in whole numbers, built from
 * the files alone, and multipliers that close them by weak duality. Nothing here searches, rounds to nearest or uses {@code double}.
 */
@NullMarked
package batchwright.audit.proof;

import org.jspecify.annotations.NullMarked;

/**
 * The smallest snack that closes a calorie gap: whole pieces, chosen exactly.
 *
 * <p>Start at {@link batchwright.solve.snack.SnackSearch}. All sums are made in whole numbers, so 110.1 + 220.2 kcal is
 * 330.3 kcal and closes a gap of 330.3 kcal; binary fractions would miss it by a hair.
 */
package batchwright.solve.snack;

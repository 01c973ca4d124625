/**
 * How far a body may go: one table of limits as data (figures.csv, decisions.csv), asked by targets, projections and plans alike.
 */
@NullMarked
package batchwright.needs.safety;

import org.jspecify.annotations.NullMarked;

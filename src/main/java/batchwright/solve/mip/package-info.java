/**
 * Mixed-integer linear programs: a model with names for people, a relaxation that is solved again and again under changing
 * bounds, and an exact branch and bound. Knows no food.
 */
@NullMarked
package batchwright.solve.mip;

import org.jspecify.annotations.NullMarked;

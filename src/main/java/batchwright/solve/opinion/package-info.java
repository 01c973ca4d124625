/**
 * A second opinion on a plan by ojAlgo, a solver from elsewhere that comes with the program: it gets the model of the whole plan and
 * nothing else of the search. The only package that knows ojAlgo, and nothing loads it unless it is asked for.
 */
@NullMarked
package batchwright.solve.opinion;

import org.jspecify.annotations.NullMarked;

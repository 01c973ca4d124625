/**
 * What a body's weight does at an intake: the model of Hall and others for adults, integrated, and solved the other way round for the
 * intake that leads to a weight.
 */
@NullMarked
package batchwright.needs.dynamics;

import org.jspecify.annotations.NullMarked;

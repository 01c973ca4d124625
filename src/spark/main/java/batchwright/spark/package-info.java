/** The roster on Apache Spark: the same use case, on as many machines as there are. */
@NullMarked
package batchwright.spark;

import org.jspecify.annotations.NullMarked;

/**
 * Results as people and scripts read them: terminal text and JSON.
 */
@NullMarked
package batchwright.report;

import org.jspecify.annotations.NullMarked;

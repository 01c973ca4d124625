/**
 * YAML pages: a small subset of YAML with the place of every value.
 */
@NullMarked
package batchwright.files.page;

import org.jspecify.annotations.NullMarked;
